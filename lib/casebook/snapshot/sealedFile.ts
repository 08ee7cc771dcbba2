import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { replaceFile } from "./replaceFile";
import type { SnapshotPlace } from "./snapshotPlace";

const lineEnd = 10;

/**
 * Writes bytes that were derived from a casebook, after a line with their SHA-256 and a stamp of what they were derived by.
 * Where they cannot be written nothing is said.
 *
 * @returns whether they were written
 */
export function writeSealed(place: SnapshotPlace, stamp: string, bytes: Uint8Array): boolean {
  return replaceFile(place, (write) => {
    write(Buffer.from(`${headOf(stamp, bytes)}\n`, "utf8"));
    write(bytes);
  });
}

/**
 * Reads back what `writeSealed` wrote.
 *
 * @returns undefined where there is nothing, or not the very bytes that were written, or they have another stamp
 */
export function readSealed(path: string, stamp: string): Uint8Array | undefined {
  try {
    const whole = readFileSync(path);
    const end = whole.indexOf(lineEnd);
    const bytes = whole.subarray(end + 1);
    return end > 0 && whole.toString("utf8", 0, end) === headOf(stamp, bytes) ? bytes : undefined;
  } catch (error) {
    if (error instanceof Error) return undefined;
    throw error;
  }
}

const headOf = (stamp: string, bytes: Uint8Array) =>
  JSON.stringify({ stamp, sha256: createHash("sha256").update(bytes).digest("hex") });
