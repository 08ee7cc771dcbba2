import { readFileSync } from "node:fs";
import { codeOf } from "../keeping/diskFault";

/** The bytes of a file; undefined where there is none. */
export function readIfThere(path: string): Uint8Array | undefined {
  try {
    return readFileSync(path);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
}
