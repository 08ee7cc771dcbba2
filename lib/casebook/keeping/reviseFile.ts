import { join } from "node:path";
import type { ContentProblem } from "../../document/contentProblem";
import { contentHash, noFile } from "./contentHash";
import { type Disk, realDisk } from "./disk";
import { diskFault } from "./diskFault";
import type { KeepingPlace } from "./keepingPlace";
import { keepRevision } from "./keepRevision";
import { listRevisions } from "./listRevisions";
import { type CaseLock, lockCase } from "./lockCase";
import { readKept } from "./readKept";
import { formatRevisionName } from "./revisionName";

/** A file as somebody wants it to stand, and the version that they had before them when they wrote it. */
export type FileEdit = Readonly<{ text: string; baseHash: string }>;

/** What a save needs from outside; `mark` is a word that no other save uses at the same time. */
export type FileKeeper = Readonly<{
  nowMs: number;
  mark: string;
  disk?: Disk;
  /** As many versions as are kept, the last ones; default all. */
  mostKept?: number;
}>;

/** A file that was saved; one that changed under the hands, with both versions; or what keeps it from being saved. */
export type RevisedFile =
  | Readonly<{ kind: "saved"; hash: string }>
  | Readonly<{ kind: "conflict"; mine: string; theirs: string; theirHash: string }>
  | Readonly<{ kind: "refused"; problems: readonly ContentProblem[] }>;

/**
 * Saves a new version of a file in place of the one that was edited, whole or not at all: written and flushed beside its
 * place, then renamed into it. Where the file on disk is no longer the one that was edited it stands as it is; the new
 * version is kept aside and both come back. Every version that ever stood in the file, as far as it was seen here, and every
 * version saved is kept in the file's folder of revisions. Saving what stands there already is well and changes nothing.
 *
 * Programs that save through here wait for one another. An editor does not: what it writes in the very moment between the
 * last look and the rename, less than a millisecond, is lost to it.
 *
 * @param text must hold: nothing here looks into it
 */
export function reviseFile(
  { text, baseHash }: FileEdit,
  place: KeepingPlace,
  keeper: FileKeeper,
): RevisedFile {
  const { nowMs, mark, disk = realDisk, mostKept = Number.POSITIVE_INFINITY } = keeper;
  const refuse = (received: string, expected: string): RevisedFile => ({
    kind: "refused",
    problems: [{ file: place.file, line: 0, field: "", received, expected }],
  });
  let lock: CaseLock | undefined;
  try {
    disk.makeFolder(place.revisions);
    lock = lockCase(place, { disk, mark });
    if (!lock) return refuse("another program that is saving this file", "nothing new: save again");
    const half = (folder: string, number: number) => join(folder, `.${place.id}.${number}.half`);
    const { number } = lock;
    // What the holder before left half written was left by a kill.
    for (const folder of [place.folder, place.revisions]) disk.remove(half(folder, number - 1));
    const keep = (bytes: Uint8Array, atMs: number, aside = false) =>
      keepRevision(place, bytes, { disk, nowMs: atMs, half: half(place.revisions, number), aside });
    const mine = Buffer.from(text, "utf8");
    const hash = contentHash(mine);
    const now = readKept(place);
    if (now.hash !== hash) {
      if (now.hash !== baseHash) {
        if (now.hash !== noFile) keep(now.bytes, now.changedMs);
        keep(mine, nowMs, true);
        return { kind: "conflict", mine: text, theirs: now.text, theirHash: now.hash };
      }
      if (now.hash !== noFile) keep(now.bytes, now.changedMs);
      keep(mine, nowMs);
      const beside = half(place.folder, number);
      try {
        disk.writeWhole(beside, mine);
        const last = readKept(place);
        if (last.hash !== baseHash || !lock.isStillMine()) {
          return { kind: "conflict", mine: text, theirs: last.text, theirHash: last.hash };
        }
        disk.rename(beside, place.path);
      } finally {
        disk.remove(beside);
      }
    }
    disk.flushFolder(place.folder);
    for (const old of listRevisions(place).slice(mostKept))
      disk.remove(join(place.revisions, formatRevisionName(old)));
    return { kind: "saved", hash };
  } catch (error) {
    const fault = diskFault(error, place.folder);
    if (!fault) throw error;
    return refuse(fault.received, fault.expected);
  } finally {
    lock?.release();
  }
}
