import { spawn } from "node:child_process";
import { describe, expect, it } from "vitest";
import { processMark } from "../../bin/setup/processMark.mjs";

describe("processMark", () => {
  it("stays the same for as long as a process runs, and begins with its number", () => {
    const mark = processMark(process.pid);
    expect(mark).toBe(processMark(process.pid));
    expect(Number.parseInt(mark ?? "", 10)).toBe(process.pid);
  });

  it("is undefined once the process is gone", async () => {
    const child = spawn(process.execPath, ["-e", ""]);
    const pid = child.pid ?? 0;
    await new Promise((resolve) => child.once("exit", resolve));
    expect(processMark(pid)).toBeUndefined();
  });

  it.each([0, -1, Number.NaN, 1.5])("is undefined for %s, which is no process's number", (pid) => {
    expect(processMark(pid)).toBeUndefined();
  });
});
