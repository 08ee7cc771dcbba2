// @ts-check
import { constants } from "node:os";
import { parentOf } from "./parentOf.mjs";
import { stopCommands } from "./startCommand.mjs";

const lookEveryMs = 500;

/**
 * Makes this process, and all it has started, end when it is told to or when the process that started it is gone.
 *
 * A parent that is killed outright sends no signal; all that can be seen is that we have a new parent. Under npm the
 * parent may be a shell that npm put in between and that outlives it, so there the parent's own parent is looked at too.
 */
export function stopWithParent() {
  const underNpm = process.env.npm_lifecycle_event !== undefined;
  const look = () => `${process.ppid} ${underNpm ? parentOf(process.ppid) : ""}`;
  const first = look();
  let begun = false;
  /** @param {"SIGTERM" | "SIGINT" | "SIGHUP"} signal */
  const stop = async (signal) => {
    if (begun) return;
    begun = true;
    const code = await stopCommands();
    process.exit(code ?? 128 + constants.signals[signal]);
  };
  for (const signal of /** @type {const} */ (["SIGTERM", "SIGINT", "SIGHUP"])) {
    process.on(signal, () => stop(signal));
  }
  setInterval(() => {
    if (look() !== first) stop("SIGHUP");
  }, lookEveryMs).unref();
}
