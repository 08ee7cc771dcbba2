import { createHash } from "node:crypto";
import { closeSync, openSync, readSync } from "node:fs";
import type { Case } from "../caseFile";
import type { Snapshot, SnapshotEntry, SnapshotHead } from "./snapshot";

const chunkBytes = 4_000_000;
const lineEnd = 10;

/**
 * Reads a snapshot back. Whatever is wrong with it (not there, torn, cut short, a bit turned over, of another format) it is
 * thrown away whole.
 *
 * @param format what its head must say; see `formatStamp`
 * @returns undefined where there is none to be trusted
 */
export function readSnapshot(path: string, format: string): Snapshot | undefined {
  try {
    return readSealed(path, format);
  } catch (error) {
    // Not there, not to be opened, or no JSON: all one, there is no snapshot.
    if (error instanceof Error) return undefined;
    throw error;
  }
}

function readSealed(path: string, format: string): Snapshot | undefined {
  const hash = createHash("sha256");
  const entries = new Map<string, SnapshotEntry>();
  let head: SnapshotHead | undefined;
  let last: Buffer | undefined;
  let lines = 0;
  // Of every line it shows only with the next that it is not the seal.
  for (const line of readLines(path)) {
    if (last !== undefined) {
      hash.update(last).update("\n");
      lines += 1;
      const value: unknown = JSON.parse(last.toString("utf8"));
      if (head === undefined) {
        if (!isHead(value) || value.format !== format) return undefined;
        head = value;
      } else {
        if (!isEntry(value)) return undefined;
        const [file, size, mtimeMs, ctimeMs, sha256, kase] = value;
        entries.set(file, { case: kase, status: { size, mtimeMs, ctimeMs }, hash: sha256 });
      }
    }
    last = line;
  }
  if (head === undefined || last === undefined) return undefined;
  const seal = JSON.stringify({ lines, sha256: hash.digest("hex") });
  return last.toString("utf8") === seal ? { head, entries } : undefined;
}

/** The lines of a file without their ends, a piece of the file at a time; what follows the last line end is a line too. */
function* readLines(path: string): Generator<Buffer> {
  const handle = openSync(path, "r");
  try {
    let rest: Buffer = Buffer.alloc(0);
    for (;;) {
      const chunk = Buffer.allocUnsafe(chunkBytes);
      const length = readSync(handle, chunk, 0, chunkBytes, null);
      if (length === 0) break;
      const text =
        rest.length === 0 ? chunk.subarray(0, length) : Buffer.concat([rest, chunk.subarray(0, length)]);
      let from = 0;
      for (let end = text.indexOf(lineEnd, from); end >= 0; end = text.indexOf(lineEnd, from)) {
        yield text.subarray(from, end);
        from = end + 1;
      }
      rest = text.subarray(from);
    }
    if (rest.length > 0) yield rest;
  } finally {
    closeSync(handle);
  }
}

const isHead = (value: unknown): value is SnapshotHead =>
  typeof value === "object" &&
  value !== null &&
  "format" in value &&
  "vocabulary" in value &&
  "takenMs" in value &&
  typeof value.takenMs === "number";

type Line = readonly [string, number, number, number, string, Case];

/** The seal vouches for what is inside: it was a case when it was written, by a version with the same schema. */
const isEntry = (value: unknown): value is Line =>
  Array.isArray(value) &&
  value.length === 6 &&
  typeof value[0] === "string" &&
  value.slice(1, 4).every((one) => typeof one === "number") &&
  typeof value[4] === "string" &&
  typeof value[5] === "object" &&
  value[5] !== null;
