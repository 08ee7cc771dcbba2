// @ts-check
import { spawn } from "node:child_process";
import { constants } from "node:os";

/** @typedef {{ child: import("node:child_process").ChildProcess, ended: Promise<number> }} Started */

/** @type {Set<Started>} */
const running = new Set();
let stopping = false;

/** Time given to a child to end by itself before it is killed. */
const graceMs = 5000;

/**
 * Starts a program and keeps it on the list of what must not outlive us.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {import("node:child_process").SpawnOptions} [options] as for node's spawn
 * @returns {Started} `ended` gives the exit code: the child's own, 128 + the signal's number when a signal ended
 *   it, 127 when it could not be started
 */
export function startCommand(command, args, options = {}) {
  const child = spawn(command, args, { shell: process.platform === "win32", ...options });
  /** @type {Promise<number>} */
  const ended = new Promise((resolve) => {
    child.once("error", (error) => {
      process.stderr.write(`${command} could not be started: ${error.message}\n`);
      resolve(127);
    });
    child.once("exit", (code, signal) => resolve(code ?? 128 + (signal ? constants.signals[signal] : 0)));
  });
  const started = { child, ended };
  running.add(started);
  ended.then(() => running.delete(started));
  return started;
}

/**
 * Runs a program to its end.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {import("node:child_process").SpawnOptions} [options]
 * @returns {Promise<number>} the exit code, as in {@link startCommand}; never settles once we are being stopped, so
 *   that no next step begins in the meantime
 */
export async function runCommand(command, args, options) {
  const code = await startCommand(command, args, options).ended;
  return stopping ? new Promise(() => {}) : code;
}

/**
 * Ends every program that was started: first by asking, after five seconds by force.
 *
 * @returns {Promise<number | undefined>} the exit code of the last one, undefined when none was running
 */
export async function stopCommands() {
  stopping = true;
  const last = [...running];
  for (const { child } of last) child.kill("SIGTERM");
  const force = setTimeout(() => {
    for (const { child } of last) child.kill("SIGKILL");
  }, graceMs);
  const codes = await Promise.all(last.map(({ ended }) => ended));
  clearTimeout(force);
  return codes.at(-1);
}
