import {
  closeSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { dirname, join } from "node:path";
import type { SnapshotPlace } from "./snapshotPlace";

/** Half-written files older than this were left by a program that was killed. */
const strayMs = 3_600_000;

/**
 * Writes a file that may be lost but must not be half there: beside its place, then renamed into it, so that a reader finds
 * the old one or the new one. It is not flushed to the disk: what a power cut leaves of it is found out when it is read.
 * Where it cannot be written (a folder that is read-only, a full disk) nothing is said.
 *
 * @param fill writes the bytes, one piece after another
 * @returns whether it was written
 */
export function replaceFile(
  { path, mark, nowMs }: SnapshotPlace,
  fill: (write: (bytes: Uint8Array) => void) => void,
): boolean {
  const half = `${path}.${mark}.half`;
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    removeStrays(dirname(path), nowMs);
    const handle = openSync(half, "wx", 0o600);
    try {
      fill((bytes) => {
        for (let written = 0; written < bytes.length; ) written += writeSync(handle, bytes, written);
      });
    } finally {
      closeSync(handle);
    }
    renameSync(half, path);
    return true;
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    removeQuietly(half);
    return false;
  }
}

function removeStrays(folder: string, nowMs: number): void {
  for (const name of readdirSync(folder).filter((one) => one.endsWith(".half"))) {
    const path = join(folder, name);
    const changedMs = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? nowMs;
    if (changedMs < nowMs - strayMs) removeQuietly(path);
  }
}

function removeQuietly(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {
    // A folder that may not be written to: there is nothing to take away either.
  }
}
