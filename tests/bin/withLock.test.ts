import { spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { processMark } from "../../bin/setup/processMark.mjs";
import { withLock } from "../../bin/setup/withLock.mjs";

let folder = "";
let lock = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "benchlore-lock-"));
  lock = join(folder, "state", "setup.lock");
  vi.spyOn(process.stderr, "write").mockReturnValue(true);
});

afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

function leaveLock(owner: string | undefined): void {
  mkdirSync(lock, { recursive: true });
  if (owner !== undefined) writeFileSync(join(lock, "owner"), owner);
}

describe("withLock", () => {
  it("holds the lock in our name while the work runs, and gives it back with the result", async () => {
    const given = await withLock(lock, async () => readFileSync(join(lock, "owner"), "utf8"));
    expect(given).toBe(processMark(process.pid));
    expect(existsSync(lock)).toBe(false);
  });

  it("gives the lock back when the work fails, and passes the error on", async () => {
    await expect(withLock(lock, () => Promise.reject(new Error("broken")))).rejects.toThrow("broken");
    expect(existsSync(lock)).toBe(false);
  });

  it("lets two runs take turns, never at once", async () => {
    const seen: string[] = [];
    const work = (name: string) => async () => {
      seen.push(`${name} begins`);
      await wait(50);
      seen.push(`${name} ends`);
    };
    await Promise.all([withLock(lock, work("a")), withLock(lock, work("b")), withLock(lock, work("c"))]);
    for (let at = 0; at < seen.length; at += 2) {
      expect(seen[at + 1]).toBe(seen[at]?.replace("begins", "ends"));
    }
    expect(seen).toHaveLength(6);
  });

  it("takes over the lock of a process that is gone, at once", async () => {
    const child = spawn(process.execPath, ["-e", "setTimeout(() => {}, 60_000)"]);
    const mark = processMark(child.pid ?? 0);
    leaveLock(mark);
    child.kill("SIGKILL");
    await new Promise((resolve) => child.once("exit", resolve));
    const began = performance.now();
    expect(await withLock(lock, async () => "done")).toBe("done");
    expect(performance.now() - began).toBeLessThan(200);
  });

  it.runIf(existsSync("/proc/self/stat"))(
    "takes over a lock whose number now belongs to another process",
    async () => {
      leaveLock(`${process.pid}@1`);
      expect(await withLock(lock, async () => "done")).toBe("done");
    },
  );

  it("waits for a living owner", async () => {
    leaveLock(processMark(process.ppid));
    let done = false;
    const waiting = withLock(lock, async () => {
      done = true;
    });
    await wait(600);
    expect(done).toBe(false);
    rmSync(lock, { recursive: true });
    await waiting;
    expect(done).toBe(true);
  });

  it("waits for a lock just made whose owner is not written yet, and takes over an old one", async () => {
    leaveLock(undefined);
    let done = false;
    const waiting = withLock(lock, async () => {
      done = true;
    });
    await wait(600);
    expect(done).toBe(false);
    const longAgo = new Date(Date.now() - 60_000);
    utimesSync(lock, longAgo, longAgo);
    await waiting;
    expect(done).toBe(true);
  });

  it("gives a dead lock to one of several runs at a time", async () => {
    leaveLock("999999999@1");
    let inside = 0;
    let most = 0;
    const work = async () => {
      most = Math.max(most, ++inside);
      await wait(30);
      inside--;
    };
    await Promise.all(Array.from({ length: 5 }, () => withLock(lock, work)));
    expect(most).toBe(1);
  });
});
