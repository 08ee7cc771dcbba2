import { createHash } from "node:crypto";
import { replaceFile } from "./replaceFile";
import type { SnapshotEntry, SnapshotHead } from "./snapshot";
import type { SnapshotPlace } from "./snapshotPlace";

/** Letters collected before they are written. Chosen: a hundredth of a second's work. */
const batchLength = 4_000_000;

/**
 * Writes a snapshot: a line of JSON for its head, two a case (what is known of its file; the case), and last a seal with their
 * number and SHA-256, without which it counts for nothing. Where it cannot be written nothing is said: the next start takes longer, that is all.
 *
 * @returns whether it was written
 */
export function writeSnapshot(
  place: SnapshotPlace,
  head: SnapshotHead,
  entries: ReadonlyMap<string, SnapshotEntry>,
): boolean {
  return replaceFile(place, (write) => {
    const hash = createHash("sha256");
    let lines = 0;
    let batch: string[] = [];
    let length = 0;
    const flush = () => {
      const bytes = Buffer.from(batch.join(""), "utf8");
      hash.update(bytes);
      write(bytes);
      batch = [];
      length = 0;
    };
    for (const line of linesOf(head, entries)) {
      batch.push(line, "\n");
      length += line.length;
      lines += 1;
      if (length >= batchLength) flush();
    }
    flush();
    write(Buffer.from(`${JSON.stringify({ lines, sha256: hash.digest("hex") })}\n`, "utf8"));
  });
}

function* linesOf(head: SnapshotHead, entries: ReadonlyMap<string, SnapshotEntry>): Generator<string> {
  yield JSON.stringify(head);
  for (const [file, { id, isPhotographed, case: kase, status, hash }] of entries) {
    const { size, mtimeMs, ctimeMs } = status;
    yield JSON.stringify([file, size, mtimeMs, ctimeMs, hash, id, isPhotographed]);
    yield JSON.stringify(kase.value);
  }
}
