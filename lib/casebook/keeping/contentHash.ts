import { createHash } from "node:crypto";

/** The hash of a file that is not there. */
export const noFile = "";

/**
 * The SHA-256 of a file's bytes, by which two versions are told apart.
 *
 * @returns 64 hexadecimal digits
 */
export function contentHash(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}
