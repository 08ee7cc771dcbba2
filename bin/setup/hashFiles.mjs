// @ts-check
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/**
 * One hash over files and whole folders: it changes when a name, a place or a byte does, and with nothing else.
 *
 * @param {string} root
 * @param {readonly string[]} paths files or folders below root, with forward slashes; one that is missing counts as empty
 * @returns {string} SHA-256 in hexadecimal, the same in whatever order the disk or the caller lists them
 */
export function hashFiles(root, paths) {
  const hash = createHash("sha256");
  for (const path of [...new Set(paths.flatMap((each) => listFiles(root, each)))].sort()) {
    const bytes = readFileSync(join(root, path));
    // The length keeps the end of one file from passing for the name of the next.
    hash.update(JSON.stringify([path, bytes.length])).update(bytes);
  }
  return hash.digest("hex");
}

/**
 * @param {string} root
 * @param {string} path
 * @returns {string[]}
 */
function listFiles(root, path) {
  const found = statSync(join(root, path), { throwIfNoEntry: false });
  if (found?.isDirectory()) {
    return readdirSync(join(root, path)).flatMap((name) => listFiles(root, `${path}/${name}`));
  }
  return found?.isFile() ? [path] : [];
}
