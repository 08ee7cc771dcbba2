// @ts-check
import { readFileSync } from "node:fs";

/**
 * A mark that tells a running process from every other one, earlier ones with the same number included.
 *
 * A number alone is not enough: in a container that starts anew, the same few numbers come back each time.
 *
 * @param {number} pid
 * @returns {string | undefined} `pid` on systems without /proc, `pid@start` with it (start: clock ticks since the
 *   machine came up); undefined when no such process runs
 * Source: proc(5), /proc/pid/stat, field 22 (starttime).
 */
export function processMark(pid) {
  if (!Number.isInteger(pid) || pid <= 0) return undefined;
  try {
    process.kill(pid, 0);
  } catch (error) {
    // EPERM: it runs, but belongs to somebody else.
    if (!(error instanceof Error && "code" in error && error.code === "EPERM")) return undefined;
  }
  return `${pid}${startOf(pid)}`;
}

/** @param {number} pid */
function startOf(pid) {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    // The name, field 2, stands in brackets and may itself hold spaces and brackets.
    const fromThird = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
    return `@${fromThird[22 - 3]}`;
  } catch {
    return "";
  }
}
