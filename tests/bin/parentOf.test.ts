import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parentOf } from "../../bin/setup/parentOf.mjs";

describe("parentOf", () => {
  it.runIf(existsSync("/proc/self/stat"))("is the process that started the one asked for", () => {
    expect(parentOf(process.pid)).toBe(process.ppid);
  });

  it("is undefined for a process that does not run", () => {
    expect(parentOf(999_999_999)).toBeUndefined();
  });
});
