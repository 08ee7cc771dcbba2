import { join } from "node:path";
import type { ContentProblem } from "../../document/contentProblem";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Case } from "../caseFile";
import { readCase } from "../readCase";
import { contentHash, noFile } from "./contentHash";
import { type Disk, realDisk } from "./disk";
import { diskFault } from "./diskFault";
import type { KeepingPlace } from "./keepingPlace";
import { keepRevision } from "./keepRevision";
import { type CaseLock, lockCase } from "./lockCase";
import { readKept } from "./readKept";

/** A case as somebody wants it to stand, and the version that they had before them when they wrote it. */
export type CaseEdit = Readonly<{ text: string; baseHash: string }>;

/** What a save needs from outside; `mark` is a word that no other save uses at the same time. */
export type Keeper = Readonly<{ vocabulary: Vocabulary; nowMs: number; mark: string; disk?: Disk }>;

/** A case that was saved; one that changed under the hands, with both versions; or what keeps it from being saved. */
export type RevisedCase =
  | Readonly<{ kind: "saved"; case: Case; hash: string }>
  | Readonly<{ kind: "conflict"; mine: string; theirs: string; theirHash: string }>
  | Readonly<{ kind: "refused"; problems: readonly ContentProblem[] }>;

/**
 * Saves a new version of a case in place of the one that was edited, whole or not at all: written and flushed beside its
 * place, then renamed into it. Where the file on disk is no longer the one that was edited it stands as it is; the new
 * version is kept aside and both come back. Every version that ever stood in the file, as far as it was seen here, and every
 * version saved is kept in the case's folder of revisions. Saving what stands there already is well and changes nothing.
 *
 * Programs that save through here wait for one another. An editor does not: what it writes in the very moment between the
 * last look and the rename, less than a millisecond, is lost to it.
 */
export function reviseCase({ text, baseHash }: CaseEdit, place: KeepingPlace, keeper: Keeper): RevisedCase {
  const { vocabulary, nowMs, mark, disk = realDisk } = keeper;
  const refuse = (field: string, received: string, expected: string): RevisedCase => ({
    kind: "refused",
    problems: [{ file: place.file, line: 0, field, received, expected }],
  });
  const reading = readCase(text, place.file, vocabulary);
  if (!reading.case) return { kind: "refused", problems: reading.problems };
  if (reading.case.id !== place.id) return refuse("id", `'${reading.case.id}'`, `'${place.id}', its own id`);
  let lock: CaseLock | undefined;
  try {
    disk.makeFolder(place.revisions);
    lock = lockCase(place, { disk, mark });
    if (!lock) return refuse("", "another program that is saving this case", "nothing new: save again");
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
    return { kind: "saved", case: { ...reading.case, file: place.file }, hash };
  } catch (error) {
    const fault = diskFault(error, place.folder);
    if (!fault) throw error;
    return refuse("", fault.received, fault.expected);
  } finally {
    lock?.release();
  }
}
