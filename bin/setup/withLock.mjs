// @ts-check
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { processMark } from "./processMark.mjs";
import { say } from "./say.mjs";

const lookEveryMs = 250;

/** A lock without an owner is one whose maker is just writing its mark, or died doing so; this tells which. */
const unfinishedMs = 10_000;

/**
 * Does some work while holding a lock directory, so that two runs at once take turns.
 *
 * mkdir either makes the directory or fails, with nothing in between; the owner's mark stands in the file `owner`
 * in it. A lock whose owner no longer runs is taken over.
 *
 * @template T
 * @param {string} directory where the lock is made; folders above it are made as needed
 * @param {() => Promise<T>} work
 * @returns {Promise<T>} what the work gives; the lock is taken away whether it ends well or not
 */
export async function withLock(directory, work) {
  mkdirSync(dirname(directory), { recursive: true });
  for (let told = false; !takeLock(directory) && !inheritLock(directory); ) {
    if (!told) say(`Another run is setting up (its lock is ${directory}); waiting for it.`);
    told = true;
    await wait(lookEveryMs);
  }
  const release = () => rmSync(directory, { recursive: true, force: true });
  process.once("exit", release);
  try {
    return await work();
  } finally {
    process.off("exit", release);
    release();
  }
}

/**
 * @param {string} directory
 * @returns {boolean} false when it is already there
 */
function takeLock(directory) {
  try {
    mkdirSync(directory);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
  writeFileSync(join(directory, "owner"), processMark(process.pid) ?? "");
  return true;
}

/**
 * Takes over a lock whose owner is gone.
 *
 * Several runs may find the same dead lock, so it is never removed and made again: one of them makes the directory
 * `heir` in it, makes sure that it is still the lock and the owner it looked at (an earlier heir may have come and
 * finished in between), and only then writes its own mark.
 *
 * @param {string} directory
 * @returns {boolean} whether the lock is now ours
 */
function inheritLock(directory) {
  const seen = identify(directory);
  if (isHeld(directory)) return false;
  const heir = join(directory, "heir");
  try {
    mkdirSync(heir);
  } catch {
    // Another heir is at it. One that died at it is cleared away for the next look.
    if (ageMs(heir) > unfinishedMs) rmSync(heir, { recursive: true, force: true });
    return false;
  }
  const ours = identify(directory) === seen;
  if (ours) writeFileSync(join(directory, "owner"), processMark(process.pid) ?? "");
  rmSync(heir, { recursive: true, force: true });
  return ours;
}

/**
 * Whether a lock has a living owner, or is so new that its owner may just be writing its mark.
 *
 * @param {string} directory
 */
function isHeld(directory) {
  const owner = readOwner(directory);
  if (owner === "") return ageMs(directory) < unfinishedMs;
  return processMark(Number.parseInt(owner, 10)) === owner;
}

/**
 * Which lock this is: the directory itself, not only its name, and its owner.
 *
 * @param {string} directory
 */
function identify(directory) {
  return `${statSync(directory, { throwIfNoEntry: false })?.ino} ${readOwner(directory)}`;
}

/** @param {string} directory */
function readOwner(directory) {
  try {
    return readFileSync(join(directory, "owner"), "utf8");
  } catch {
    return "";
  }
}

/** @param {string} directory gone counts as made just now */
function ageMs(directory) {
  const made = statSync(directory, { throwIfNoEntry: false })?.mtimeMs;
  return made === undefined ? 0 : Date.now() - made;
}
