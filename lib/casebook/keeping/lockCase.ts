import { readdirSync, readFileSync, statSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import type { Disk } from "./disk";
import { codeOf } from "./diskFault";
import type { KeepingPlace } from "./keepingPlace";

/** A case held by one program; its number is greater than that of any holder before. */
export type CaseLock = Readonly<{ number: number; isStillMine: () => boolean; release: () => void }>;

/** A save takes milliseconds: a lock this old belongs to nobody, whatever program now has the holder's process number. */
const forgottenMs = 60_000;
const waitMs = 3_000;
const pauseMs = 5;
const holderSchema = z.object({ pid: z.int().positive(), host: z.string() });

/**
 * Holds a case against other programs until it is released. Locks are numbered files, and the highest number counts: it is
 * taken while its file has a living holder in it, free when the file is empty or its holder was killed. The next holder makes
 * the next number, which only one can; no number below the highest is ever held again, so that a lock left by a killed
 * program is passed over without anybody having to take it away first.
 *
 * @param mark a word that no other program uses at the same time
 * @returns undefined where another program held it all the while that was waited
 */
export function lockCase(
  { revisions }: Pick<KeepingPlace, "revisions">,
  { disk, mark }: Readonly<{ disk: Disk; mark: string }>,
): CaseLock | undefined {
  const path = (number: number) => join(revisions, `${number}.lock`);
  const own = join(revisions, `.${mark}.lock`);
  const until = performance.now() + waitMs;
  try {
    disk.writeWhole(own, Buffer.from(JSON.stringify({ pid: process.pid, host: hostname() })));
    for (;;) {
      const highest = highestLock(revisions);
      if (highest === 0 || isFree(path(highest), own)) {
        const number = highest + 1;
        if (isTaken(() => disk.link(own, path(number)))) continue;
        // Somebody slower may have made a number that others have long gone past.
        if (highestLock(revisions) === number) {
          for (const below of locksIn(revisions)) if (below < number) disk.remove(path(below));
          return {
            number,
            isStillMine: () => highestLock(revisions) === number,
            release: () => {
              if (highestLock(revisions) === number) disk.empty(path(number));
            },
          };
        }
        disk.remove(path(number));
      }
      if (performance.now() > until) return undefined;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, pauseMs);
    }
  } finally {
    disk.remove(own);
  }
}

const locksIn = (folder: string) =>
  readdirSync(folder).flatMap((name) => {
    const number = /^(\d{1,15})\.lock$/.exec(name)?.[1];
    return number === undefined ? [] : [Number(number)];
  });
const highestLock = (folder: string) => Math.max(0, ...locksIn(folder));

function isTaken(link: () => void): boolean {
  try {
    link();
    return false;
  } catch (error) {
    if (codeOf(error) === "EEXIST") return true;
    throw error;
  }
}

/** @param now a file that was written just now, for the time by the clock that stamps files */
function isFree(path: string, now: string): boolean {
  try {
    const written = readFileSync(path, "utf8");
    if (written === "") return true;
    // A clock that was set back makes a lock seem to come from the future: as far off, it is as forgotten.
    if (Math.abs(statSync(now).mtimeMs - statSync(path).mtimeMs) > forgottenMs) return true;
    const holder = holderSchema.safeParse(JSON.parse(written)).data;
    return holder !== undefined && holder.host === hostname() && !isAlive(holder.pid);
  } catch (error) {
    if (codeOf(error) === "ENOENT" || error instanceof SyntaxError) return false;
    throw error;
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) !== "ESRCH";
  }
}
