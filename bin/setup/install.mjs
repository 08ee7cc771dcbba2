// @ts-check
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { hashFiles } from "./hashFiles.mjs";
import { packagesAgree } from "./packagesAgree.mjs";
import { projectRoot } from "./projectRoot.mjs";
import { say } from "./say.mjs";
import { runCommand } from "./startCommand.mjs";
import { withLock } from "./withLock.mjs";

/**
 * Sees to it that the packages of package-lock.json are in node_modules.
 *
 * Nothing is done when the lock file's hash is the one on record, or when npm's own record shows the same packages
 * (somebody ran npm by hand). Whatever npm says goes to standard error.
 *
 * @param {string} [root] the project's folder
 * @throws Error when npm could not install them
 */
export async function install(root = projectRoot) {
  if (isInstalled(root)) return;
  await withLock(join(root, ".state", "setup.lock"), async () => {
    if (isInstalled(root)) return;
    if (!isInPlace(root)) await cleanInstall(root);
    writeFileSync(recordFile(root), lockHash(root));
  });
}

/** @param {string} root */
async function cleanInstall(root) {
  say("Installing the packages; this takes a minute the first time.");
  // A quiet `npm run -s` hands its silence on to npm ci, which would then fail without a word.
  const args = ["ci", "--include=dev", "--loglevel=error"];
  const npm = process.env.npm_execpath;
  const [command, first] = npm?.endsWith("npm-cli.js") ? [process.execPath, [npm]] : ["npm", []];
  const code = await runCommand(command, [...first, ...args], { cwd: root, stdio: ["ignore", 2, 2] });
  if (code !== 0) {
    throw new Error(
      `the packages must install; npm ci ended with code ${code}; see what it said above, check that the package registry can be reached, and run the same command again`,
    );
  }
}

/** @param {string} root */
const recordFile = (root) => join(root, "node_modules", ".benchlore-lock");

/** @param {string} root */
const lockHash = (root) => hashFiles(root, ["package-lock.json"]);

/** @param {string} root */
function isInstalled(root) {
  return existsSync(recordFile(root)) && readFileSync(recordFile(root), "utf8") === lockHash(root);
}

/** @param {string} root */
function isInPlace(root) {
  const record = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(record)) return false;
  return packagesAgree(readJson(join(root, "package-lock.json")), readJson(record));
}

/** @param {string} file */
const readJson = (file) => JSON.parse(readFileSync(file, "utf8"));
