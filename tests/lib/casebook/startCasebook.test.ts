import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { blankCase } from "@/lib/casebook/blankCase";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { readCase } from "@/lib/casebook/readCase";
import { startCasebook } from "@/lib/casebook/startCasebook";
import { goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

describe("a casebook that is started", () => {
  it("is empty, and starting it again changes nothing", () => {
    const content = join(temporaryFolder(), "own");
    expect(startCasebook(content)).toBeUndefined();
    expect(startCasebook(content)).toBeUndefined();
    expect(readdirSync(content)).toEqual(["cases", "photos"]);
    expect(loadCasebook(join(content, "cases"), smallVocabulary).cases.size).toBe(0);
  });

  it("is refused where cases are, or a file, and leaves them", () => {
    const content = temporaryFolder();
    startCasebook(content);
    writeFileSync(join(content, "cases", "24-001.md"), goodCase);
    expect(startCasebook(content)?.received).toBe("a casebook with 1 cases");
    expect(readFileSync(join(content, "cases", "24-001.md"), "utf8")).toBe(goodCase);
    expect(startCasebook(join(content, "cases", "24-001.md"))?.received).toBe("a file of that name");
    expect(existsSync(join(content, "cases", "24-001.md"))).toBe(true);
  });
});

describe("an empty case file", () => {
  const blank = blankCase("24-001", "2024-03-04");

  it("does not hold as it is, and names each field that is to be filled in", () => {
    const { problems } = readCase(blank, "a.md", smallVocabulary);
    expect(problems.map(({ field, line }) => [field, line])).toEqual([
      ["title", 3],
      ["instrument", 5],
      ["complaint", 10],
      ["outcome", 17],
      ["minutes", 18],
    ]);
  });

  it("holds once it is filled in where it says so", () => {
    const filled = blank
      .replace(/^title:/m, "title: Third valve hangs")
      .replace(/^instrument:/m, "instrument: cornet")
      .replace(/^complaint:/m, "complaint: It hangs.")
      .replace(/^path: \[\] .*$/m, "path:")
      .replace(/^causes: \[\] .*$/m, "causes:")
      .replaceAll(/^# {2}- /gm, "  - ")
      .replace(/^outcome:/m, "outcome: fixed")
      .replace(/^minutes:/m, "minutes: 12");
    expect(readCase(filled, "a.md", smallVocabulary)).toMatchObject({
      problems: [],
      case: { path: [{ found: "hangs" }, { result: "fixed" }], causes: [{ cause: "gummed-oil" }] },
    });
  });
});
