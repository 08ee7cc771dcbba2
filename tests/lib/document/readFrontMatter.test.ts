import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { longestFile, readFrontMatter } from "@/lib/document/readFrontMatter";

const read = (text: string) => readFrontMatter(text, "a.md");
const told = (text: string) => read(text).problems.map(({ line, received }) => `${line} ${received}`);

describe("front matter", () => {
  it("stands between two lines of three dashes, the story below it", () => {
    expect(read("---\na: 1\n---\n\nStory.\n")).toMatchObject({
      data: { a: 1 },
      body: "Story.",
      problems: [],
    });
  });

  it("counts lines in the whole file", () => {
    expect(read("---\na: 1\nb: 2\n---\n").lineOf(["b"])).toBe(3);
  });

  it("ends at its first line of dashes; later ones are the story's", () => {
    expect(read("---\na: 1\n---\nOne\n\n---\n\nTwo\n").body).toBe("One\n\n---\n\nTwo");
  });

  it("is the same with a byte-order mark, with spaces after the dashes and with any kind of line end", () => {
    const plain = "---\na: 1\nb: |\n  x\n  y\nc: 2\n---\nOne\n\nTwo\n";
    const { data, body } = read(plain);
    expect(data).toEqual({ a: 1, b: "x\ny\n", c: 2 });
    for (const other of [
      `\uFEFF${plain}`,
      plain.replaceAll("---", "---  "),
      plain.replaceAll("\n", "\r\n"),
      plain.replaceAll("\n", "\r"),
      `\uFEFF${plain.replaceAll("\n", "\r\n")}`,
    ]) {
      expect(read(other)).toMatchObject({ data, body, problems: [] });
    }
  });

  it("may hold nothing but a remark", () => {
    expect(read("---\n# to do\n---\nStory.\n")).toMatchObject({ data: null, body: "Story.", problems: [] });
  });

  it.each([
    ["js", "---js\nmodule.exports = {}\n---\n"],
    ["javascript", "---javascript\nprocess.exit(9)\n---\n"],
    ["json", '---json\n{ "a": 1 }\n---\n'],
    ["yaml by name", "---yaml\na: 1\n---\n"],
  ])("in %s is refused before it is looked at", (_, text) => {
    expect(told(text)).toEqual([expect.stringMatching(/^1 '---[a-z]+'$/)]);
  });

  it("is not cut off at a line that only begins with dashes", () => {
    expect(told("---\na: 1\n---- b\n---\n")).toEqual(["3 '---- b'"]);
  });

  it("is refused over the longest file, and taken up to it", () => {
    const front = "---\na: 1\n---\n";
    expect(read(front + "x".repeat(longestFile - front.length)).problems).toEqual([]);
    expect(told(front + "x".repeat(longestFile - front.length + 1))).toEqual([
      `1 ${longestFile + 1} characters`,
    ]);
  });

  it("comes as data or as problems for any text, and never as an exception", () => {
    const line = fc.constantFrom(
      "---",
      "a: 1",
      "- b",
      "\t",
      "'",
      "{",
      "...",
      "--- x",
      "&a *a",
      "? !!x",
      "\0",
      "%Y",
      "",
    );
    const end = fc.constantFrom("\n", "\r\n", "\r");
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.oneof(line, fc.string()), end), { maxLength: 9 }), (lines) => {
        const { data, problems } = read(lines.flat().join(""));
        if (problems.length > 0) expect(data).toBeUndefined();
        for (const { line: at } of problems) expect(at).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});
