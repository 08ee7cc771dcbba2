/** What a disk has against being written to, and what to do about it, in the words of a problem. */
export type DiskFault = Readonly<{ received: string; expected: string }>;

/**
 * Says in words why something could not be written.
 *
 * @returns undefined for an error that is not one of the disk's own: it should be thrown on
 * @example diskFault(Object.assign(new Error(), { code: "ENOSPC" }), "cases")?.received // "a full disk"
 */
export function diskFault(error: unknown, folder: string): DiskFault | undefined {
  switch (codeOf(error)) {
    case "ENOSPC":
    case "EDQUOT":
      return {
        received: "a full disk",
        expected: "nothing new: make room on the disk, then save again; what was typed is still here",
      };
    case "EROFS":
      return {
        received: "a disk that may only be read",
        expected: `nothing new: make ${folder} writable, then save again; what was typed is still here`,
      };
    case "EACCES":
    case "EPERM":
      return {
        received: "a folder that may not be written to",
        expected: `nothing new: get leave to write in ${folder}, then save again; what was typed is still here`,
      };
    case "EIO":
      return {
        received: "a disk that fails",
        expected: "nothing new: copy the content to a sound disk; what was typed is still here",
      };
    default:
      return undefined;
  }
}

/** The code by which Node tells errors of the system apart, such as `ENOENT`; undefined for any other error. */
export function codeOf(error: unknown): string | undefined {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : undefined;
}
