// @ts-check
import { accessSync, constants, statSync } from "node:fs";
import { findChromium } from "./findChromium.mjs";
import { say } from "./say.mjs";
import { runCommand } from "./startCommand.mjs";

/**
 * The path of a Chromium for the browser tests; as root on a system with apt-get, one is installed when missing.
 *
 * @returns {Promise<string>}
 * @throws Error saying what to do when there is none
 */
export async function chromium() {
  const found = findChromium(process.env, canRun);
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && canRun("/usr/bin/apt-get")) {
    say("Installing Chromium for the browser tests (apt-get).");
    await aptGet("update");
    await aptGet("install", "-y", "--no-install-recommends", "chromium");
    const installed = findChromium(process.env, canRun);
    if (installed !== undefined) return installed;
  }
  throw new Error(
    "the browser tests need Chromium; none was found; install it (on Debian: apt-get install chromium) or set CHROMIUM_PATH to its program",
  );
}

/** @param {string[]} args */
const aptGet = (...args) =>
  runCommand("apt-get", args, {
    stdio: ["ignore", 2, 2],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  });

/** @param {string} path */
function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
