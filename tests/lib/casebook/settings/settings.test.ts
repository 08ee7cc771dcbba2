import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { realDisk } from "@/lib/casebook/keeping/disk";
import { readSettings } from "@/lib/casebook/settings/readSettings";
import { writeSettings } from "@/lib/casebook/settings/writeSettings";
import { formatProblem } from "@/lib/document/contentProblem";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const sound = { name: "Bench & Sons: no. 7", hourCost: 54, margin: 25 };

describe("what the shop reckons with", () => {
  it("comes back as it was written, and again when it was written from what came back", () => {
    const content = temporaryFolder();
    expect(writeSettings(sound, content, "a").settings).toEqual(sound);
    const first = readFileSync(join(content, "shop.yaml"), "utf8");
    expect(readSettings(content).settings).toEqual(sound);
    writeSettings(readSettings(content).settings ?? {}, content, "b");
    expect(readFileSync(join(content, "shop.yaml"), "utf8")).toBe(first);
    expect(readdirSync(content)).toEqual(["shop.yaml"]);
  });

  it("whatever it is, as long as it holds, is read as it was written", () => {
    const content = temporaryFolder();
    const any = fc.record({
      name: fc.option(
        fc.string({ unit: "grapheme", maxLength: 40 }).filter((name) => name.trim() === name && name !== ""),
        { nil: undefined },
      ),
      hourCost: fc.double({ min: 0.01, max: 10_000, noNaN: true }),
      margin: fc.double({ min: 0, max: 90, noNaN: true }),
    });
    fc.assert(
      fc.property(any, (settings) => {
        const known = Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== undefined));
        expect(writeSettings(settings, content, "a")).toEqual({ settings: known, problems: [] });
        expect(readSettings(content).settings).toEqual(known);
      }),
      { numRuns: 60 },
    );
  });

  it("keeps the comments of a file that somebody wrote by hand", () => {
    const content = temporaryFolder();
    writeFileSync(join(content, "shop.yaml"), "# asked the owner in May\nhourCost: 40\nmargin: 10 # low\n");
    writeSettings({ ...sound, name: undefined, margin: 10 }, content, "a");
    expect(readFileSync(join(content, "shop.yaml"), "utf8")).toBe(
      "# asked the owner in May\nhourCost: 54\nmargin: 10 # low\n",
    );
  });

  it("is nothing, and no problem, where there is no file", () => {
    expect(readSettings(temporaryFolder())).toEqual({ settings: undefined, problems: [] });
  });

  it("that does not hold is named with line, field, what was found and what to write, and is not written", () => {
    const content = temporaryFolder();
    const text = "hourCost: cheap\nmargin: 95\nhourRate: 70\n";
    writeFileSync(join(content, "shop.yaml"), text);
    const { settings, problems } = readSettings(content);
    expect(settings).toBeUndefined();
    expect(problems.map(formatProblem)).toEqual([
      "shop.yaml:1 hourCost: found 'cheap'; write a number",
      "shop.yaml:2 margin: found 95; write a number of 90 or less",
      "shop.yaml:1 the file: found 'hourRate'; write no such field here: look for a slip in its name",
    ]);
    expect(writeSettings({ hourCost: 0 }, content, "a").problems).not.toEqual([]);
    expect(readFileSync(join(content, "shop.yaml"), "utf8")).toBe(text);
  });

  it("stands as it was when the disk is full, and it is said so", () => {
    const content = temporaryFolder();
    writeSettings(sound, content, "a");
    const full = {
      ...realDisk,
      writeWhole: () => {
        throw Object.assign(new Error("no room"), { code: "ENOSPC" });
      },
    };
    const { problems } = writeSettings({ ...sound, margin: 5 }, content, "b", full);
    expect(problems[0]?.received).toBe("a full disk");
    expect(readSettings(content).settings).toEqual(sound);
    expect(readdirSync(content)).toEqual(["shop.yaml"]);
  });

  it("in a place that is no file is a problem and not an exception", () => {
    const content = temporaryFolder();
    mkdirSync(join(content, "shop.yaml"));
    expect(readSettings(content).problems[0]?.received).toContain("EISDIR");
  });
});
