import { join } from "node:path";
import type { ContentProblem } from "../../document/contentProblem";
import { contentHash, noFile } from "./contentHash";
import { type Disk, realDisk } from "./disk";
import { diskFault } from "./diskFault";
import type { KeepingPlace } from "./keepingPlace";
import { keepRevision } from "./keepRevision";
import { listRevisions } from "./listRevisions";
import { type CaseLock, lockCase } from "./lockCase";
import { type KeptFile, readKept } from "./readKept";
import { formatRevisionName } from "./revisionName";

/** What a save needs from outside; `mark` is a word that no other save uses at the same time. */
export type FileKeeper = Readonly<{
  nowMs: number;
  mark: string;
  disk?: Disk;
  /** As many versions as are kept, the last ones; default all. */
  mostKept?: number;
}>;

/** What keeps a file from being saved. */
export type RefusedFile = Readonly<{ kind: "refused"; problems: readonly ContentProblem[] }>;

/** A file that was saved, or one that changed under the hands, with both versions. */
export type ReplacedFile =
  | Readonly<{ kind: "saved"; hash: string }>
  | Readonly<{ kind: "conflict"; mine: string; theirs: string; theirHash: string }>;

/** A file that no other program saves while it is held. */
export type HeldFile = Readonly<{
  now: KeptFile;
  /** Puts a text in its place, provided that what stands there is still the version of that hash. */
  replace: (text: string, baseHash: string) => ReplacedFile;
}>;

/**
 * Holds a file against other programs while something is done with it. A text is put in its place whole or not at all: written
 * and flushed beside it, then renamed into it. Where the file on disk is no longer the version that was to be replaced it
 * stands as it is; the new version is kept aside and both come back. Every version that ever stood in the file, as far as it
 * was seen here, and every version saved is kept in the file's folder of revisions. Saving what stands there already is well
 * and changes nothing.
 *
 * Programs that save through here wait for one another. An editor does not: what it writes in the very moment between the
 * last look and the rename, less than a millisecond, is lost to it.
 *
 * @param work must be synchronous
 */
export function holdFile<Done>(
  place: KeepingPlace,
  keeper: FileKeeper,
  work: (held: HeldFile) => Done,
): Done | RefusedFile {
  const { mark, disk = realDisk } = keeper;
  const refuse = (received: string, expected: string): RefusedFile => ({
    kind: "refused",
    problems: [{ file: place.file, line: 0, field: "", received, expected }],
  });
  let lock: CaseLock | undefined;
  try {
    disk.makeFolder(place.revisions);
    lock = lockCase(place, { disk, mark });
    if (!lock) return refuse("another program that is saving this file", "nothing new: save again");
    // What the holder before left half written was left by a kill.
    for (const folder of [place.folder, place.revisions])
      disk.remove(halfName(folder, place, lock.number - 1));
    const now = readKept(place);
    const held = { place, keeper, disk, lock };
    return work({ now, replace: (text, baseHash) => replaceFile(held, now, text, baseHash) });
  } catch (error) {
    const fault = diskFault(error, place.folder);
    if (!fault) throw error;
    return refuse(fault.received, fault.expected);
  } finally {
    lock?.release();
  }
}

type Holding = Readonly<{ place: KeepingPlace; keeper: FileKeeper; disk: Disk; lock: CaseLock }>;

const halfName = (folder: string, { id }: KeepingPlace, number: number) =>
  join(folder, `.${id}.${number}.half`);

function replaceFile(
  { place, keeper, disk, lock }: Holding,
  now: KeptFile,
  text: string,
  baseHash: string,
): ReplacedFile {
  const { nowMs, mostKept = Number.POSITIVE_INFINITY } = keeper;
  const half = (folder: string) => halfName(folder, place, lock.number);
  const keep = (bytes: Uint8Array, atMs: number, aside = false) =>
    keepRevision(place, bytes, { disk, nowMs: atMs, half: half(place.revisions), aside });
  const mine = Buffer.from(text, "utf8");
  const hash = contentHash(mine);
  if (now.hash !== hash) {
    if (now.hash !== noFile) keep(now.bytes, now.changedMs);
    if (now.hash !== baseHash) {
      keep(mine, nowMs, true);
      return { kind: "conflict", mine: text, theirs: now.text, theirHash: now.hash };
    }
    keep(mine, nowMs);
    const beside = half(place.folder);
    try {
      disk.writeWhole(beside, mine);
      const last = readKept(place);
      if (last.hash !== baseHash || !lock.isStillMine())
        return { kind: "conflict", mine: text, theirs: last.text, theirHash: last.hash };
      disk.rename(beside, place.path);
    } finally {
      disk.remove(beside);
    }
  }
  disk.flushFolder(place.folder);
  for (const old of listRevisions(place).slice(mostKept))
    disk.remove(join(place.revisions, formatRevisionName(old)));
  return { kind: "saved", hash };
}
