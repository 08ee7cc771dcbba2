import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { commandTimeout, runBenchlore } from "./runBenchlore";

const content = mkdtempSync(join(tmpdir(), "benchlore-content-"));
afterAll(() => rmSync(content, { recursive: true }));
beforeEach(() => {
  rmSync(join(content, "cases"), { recursive: true, force: true });
  rmSync(join(content, "vocabulary"), { recursive: true, force: true });
  mkdirSync(join(content, "cases"));
});

const caseText = (id: string, more = "") => `---
id: ${id}
title: A valve that hung
status: open
instrument: trumpet
received: 2026-03-09
complaint: Second valve hangs.
${more}---
It hung.
`;
const write = (name: string, text: string) => writeFileSync(join(content, "cases", name), text);
const check = () => runBenchlore(["check-content"], { content });

describe("check-content on the command line", { timeout: commandTimeout }, () => {
  it("passes an empty casebook of one's own, with the vocabulary that ships", async () => {
    const { code, out, err } = await check();
    expect([code, out]).toEqual([0, ""]);
    expect(err).toMatch(/^0 cases, [1-9]\d* instruments, .*; 0 problems\n$/);
  });

  it("passes good cases and counts them", async () => {
    write("1-1.md", caseText("1-1"));
    write("1-2.md", caseText("1-2"));
    const { code, out, err } = await check();
    expect([code, out]).toEqual([0, ""]);
    expect(err).toMatch(/^2 cases, .*; 0 problems\n$/);
  });

  it("prints one line a problem with file, line and what to write, and ends with 1", async () => {
    write("1-1.md", caseText("1-1"));
    write("1-2.md", caseText("1-2", "minutes: -5\noutcome: mended\n"));
    const { code, out, err } = await check();
    expect(code).toBe(1);
    const lines = out.trimEnd().split("\n");
    expect(lines).toHaveLength(2);
    expect(lines.find((line) => line.includes("minutes"))).toMatch(
      /1-2\.md:8 minutes: found -5; write .*0 or more/,
    );
    expect(lines.find((line) => line.includes("outcome"))).toMatch(
      /1-2\.md:9 outcome: found .*mended.*; write .*fixed/,
    );
    // The good case is read all the same.
    expect(err).toMatch(/^1 cases, .*; 2 problems\n$/);
  });

  it("ends with one line where the vocabulary has nothing to go by, as every command does", async () => {
    mkdirSync(join(content, "vocabulary"));
    for (const command of [["check-content"], ["evaluate", "--phrases"]]) {
      const { code, out, err } = await runBenchlore(command, { content });
      expect([code, out]).toEqual([1, ""]);
      expect(err).toMatch(/^\S*vocabulary: found no instruments, no parts, .*; write some, or take .*\n$/);
    }
  });

  it("checks what the shop reckons with too", async () => {
    const file = join(content, "shop.yaml");
    writeFileSync(file, "hourCost: 54\nmargin: a quarter\n");
    const { code, out } = await check();
    rmSync(file);
    expect(code).toBe(1);
    expect(out).toBe("shop.yaml:2 margin: found 'a quarter'; write a number\n");
  });

  it("finds two cases with one id", async () => {
    write("1-1.md", caseText("1-1"));
    write("copy-of-1-1.md", caseText("1-1"));
    const { code, out } = await check();
    expect(code).toBe(1);
    expect(out).toContain("copy-of-1-1.md:2 id");
  });

  it("checks a vocabulary of one's own where there is one", async () => {
    cpSync("content/vocabulary", join(content, "vocabulary"), { recursive: true });
    writeFileSync(join(content, "vocabulary", "repairs", "own.yaml"), "- id: Not An Id\n");
    const { code, out } = await check();
    expect(code).toBe(1);
    expect(out).toContain("own.yaml:1 id");
  });
});
