// @ts-check
import { readFileSync } from "node:fs";

/**
 * The number of the process that started another one.
 *
 * @param {number} pid
 * @returns {number | undefined} undefined when no such process runs, and on systems without /proc
 * Source: proc(5), /proc/pid/stat, field 4 (ppid).
 */
export function parentOf(pid) {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    // The name, field 2, stands in brackets and may itself hold spaces and brackets.
    return Number(stat.slice(stat.lastIndexOf(")") + 2).split(" ")[4 - 3]);
  } catch {
    return undefined;
  }
}
