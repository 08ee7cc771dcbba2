// @ts-check
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome-stable"];

const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome-stable",
  "/usr/lib/chromium/chromium",
  "/snap/bin/chromium",
  "/opt/google/chrome/chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/**
 * Where Chromium is on this machine: CHROMIUM_PATH, else the first name found on PATH, else the usual places.
 *
 * @param {Readonly<Record<string, string | undefined>>} env CHROMIUM_PATH and PATH are read
 * @param {(path: string) => boolean} canRun whether there is a program at a path
 * @returns {string | undefined} undefined when it is nowhere
 * @throws Error when CHROMIUM_PATH is set and nothing that runs is there
 */
export function findChromium(env, canRun) {
  const given = env.CHROMIUM_PATH;
  if (given) {
    if (canRun(given)) return given;
    throw new Error(
      `CHROMIUM_PATH must be a program that can be run; got ${given}; correct it, or leave it out to have the usual places searched`,
    );
  }
  const folders = (env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const onPath = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...usualPlaces].find(canRun);
}
