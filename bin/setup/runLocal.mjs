// @ts-check
import { join } from "node:path";
import { projectRoot } from "./projectRoot.mjs";
import { runCommand } from "./startCommand.mjs";

/**
 * Runs a program that one of the installed packages brings.
 *
 * @param {string} name its name in node_modules/.bin
 * @param {readonly string[]} args
 * @param {import("node:child_process").SpawnOptions} [options] as for node's spawn
 * @returns {Promise<number>} the exit code
 */
export function runLocal(name, args, options = {}) {
  const cwd = String(options.cwd ?? projectRoot);
  return runCommand(join(cwd, "node_modules", ".bin", name), args, { stdio: "inherit", ...options, cwd });
}
