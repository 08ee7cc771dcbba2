import { lstatSync, readFileSync } from "node:fs";
import { contentHash, noFile } from "./contentHash";
import { codeOf } from "./diskFault";
import type { KeepingPlace } from "./keepingPlace";

/** A case's file as it stands on disk now. */
export type KeptFile = Readonly<{ bytes: Buffer; text: string; hash: string; changedMs: number }>;

/** What stands in for a file that is not there. */
const missing: KeptFile = { bytes: Buffer.alloc(0), text: "", hash: noFile, changedMs: 0 };

/**
 * Reads a case's file from disk, not from memory: what an editor or another program wrote a moment ago counts.
 *
 * @returns a file that is not there as an empty one with the hash `noFile`
 * @throws what the disk throws, and `EACCES` for a link to elsewhere
 */
export function readKept({ path, file }: Pick<KeepingPlace, "path" | "file">): KeptFile {
  try {
    const status = lstatSync(path);
    if (!status.isFile()) {
      const error = new Error(`${file} must be a file; it is a link, a folder or a device`);
      throw Object.assign(error, { code: "EACCES" });
    }
    const bytes = readFileSync(path);
    return { bytes, text: bytes.toString("utf8"), hash: contentHash(bytes), changedMs: status.mtimeMs };
  } catch (error) {
    if (codeOf(error) === "ENOENT") return missing;
    throw error;
  }
}
