import { readFileSync } from "node:fs";
import { fail } from "../fail";

/** Reads a file, or standard input where it is named `-`; what cannot be read ends the command. */
export function readBytes(file: string): Uint8Array {
  try {
    return readFileSync(file === "-" ? 0 : file);
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    return fail(1, `${file}: found a file that cannot be read (${error.message}); give one that can`);
  }
}
