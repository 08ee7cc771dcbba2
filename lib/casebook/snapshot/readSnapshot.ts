import { createHash } from "node:crypto";
import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import type { Case } from "../caseFile";
import { Late } from "../lateMap";
import type { Snapshot, SnapshotEntry, SnapshotHead } from "./snapshot";

const chunkBytes = 4_000_000;
const lineEnd = 10;
/** More bytes than a seal ever has. */
const longestSeal = 200;

/**
 * Reads a snapshot back. Whatever is wrong with it (not there, torn, cut short, a bit turned over, of another format) it is
 * thrown away whole. A case is parsed when it is first asked for: the seal vouches that it can be.
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
  const entries = new Map<string, SnapshotEntry>();
  let head: SnapshotHead | undefined;
  let begun: Begun | undefined;
  let lines = 0;
  const read = readBeforeSeal(path, (line) => {
    lines += 1;
    if (begun !== undefined) {
      const [file, size, mtimeMs, ctimeMs, hash, id, isPhotographed] = begun;
      const status = { size, mtimeMs, ctimeMs };
      entries.set(file, { id, isPhotographed, case: new Late(() => parseCase(line())), status, hash });
      begun = undefined;
      return true;
    }
    const value: unknown = JSON.parse(line());
    if (head === undefined) {
      if (!isHead(value) || value.format !== format) return false;
      head = value;
    } else if (isBegun(value)) begun = value;
    else return false;
    return true;
  });
  if (head === undefined || read === undefined || begun !== undefined) return undefined;
  return read.seal === JSON.stringify({ lines, sha256: read.sha256 }) ? { head, entries } : undefined;
}

/**
 * Reads all lines of a file but the last, a piece of the file at a time, and what they and their ends come to by SHA-256.
 *
 * @param take gets each line without its end, to be decoded then or later; false where the rest need not be read
 * @returns the last line beside it; undefined where the file has no line end at its end, or a line was not taken
 */
function readBeforeSeal(
  path: string,
  take: (line: () => string) => boolean,
): Readonly<{ seal: string; sha256: string }> | undefined {
  const handle = openSync(path, "r");
  try {
    const { size } = fstatSync(handle);
    const end = Buffer.alloc(Math.min(longestSeal, size));
    readSync(handle, end, 0, end.length, size - end.length);
    const sealFrom = size - end.length + end.lastIndexOf(lineEnd, -2) + 1;
    if (end.at(-1) !== lineEnd || sealFrom <= size - end.length) return undefined;
    const hash = createHash("sha256");
    let rest = Buffer.alloc(0);
    for (let at = 0; at < sealFrom; ) {
      // A piece of its own each time: lines that are decoded later stay in it.
      const piece = Buffer.allocUnsafe(rest.length + Math.min(chunkBytes, sealFrom - at));
      rest.copy(piece);
      const length = readSync(handle, piece, rest.length, piece.length - rest.length, at);
      if (length === 0) return undefined;
      const filled = piece.subarray(0, rest.length + length);
      hash.update(filled.subarray(rest.length));
      at += length;
      let from = 0;
      for (let stop = filled.indexOf(lineEnd, rest.length); stop >= 0; stop = filled.indexOf(lineEnd, from)) {
        const [begin, end] = [from, stop];
        if (!take(() => filled.toString("utf8", begin, end))) return undefined;
        from = stop + 1;
      }
      rest = filled.subarray(from);
    }
    return {
      seal: end.toString("utf8", sealFrom - size + end.length, end.length - 1),
      sha256: hash.digest("hex"),
    };
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

/** What is known of a case's file, and the case but for its content: the line before the one that holds it. */
type Begun = readonly [
  file: string,
  size: number,
  mtimeMs: number,
  ctimeMs: number,
  hash: string,
  id: string,
  isPhotographed: boolean,
];

const isBegun = (value: unknown): value is Begun =>
  Array.isArray(value) &&
  value.length === 7 &&
  typeof value[0] === "string" &&
  value.slice(1, 4).every((one) => typeof one === "number") &&
  typeof value[4] === "string" &&
  typeof value[5] === "string" &&
  typeof value[6] === "boolean";

/** The seal vouches for what is inside: it was a case when it was written, by a version with the same schema. */
const parseCase = (line: string): Case => JSON.parse(line);
