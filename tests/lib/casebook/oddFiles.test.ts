import { chmodSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { broken, file, folderOfGoodCases, load, loadBeside, withField } from "./caseFolder";

describe("a thing in the folder that is no plain file is set aside", () => {
  it("as a link, wherever it leads: what it leads to is never read", () => {
    const folder = folderOfGoodCases();
    const outside = join(temporaryFolder(), "secret.md");
    writeFileSync(outside, goodCase);
    symlinkSync(outside, join(folder, file));
    symlinkSync(join(folder, "nowhere.md"), join(folder, "24-002.md"));
    const { ids, lines } = load(folder);
    expect(ids).toEqual(["23-900", "25-900"]);
    expect(lines).toEqual([
      `${file} the file: found a link to elsewhere; write the file itself in this folder`,
      "24-002.md the file: found a link to elsewhere; write the file itself in this folder",
    ]);
  });

  it("as a folder with a case's name", () => {
    const folder = folderOfGoodCases();
    mkdirSync(join(folder, file));
    const { ids, lines } = load(folder);
    expect(ids).toEqual(["23-900", "25-900"]);
    expect(lines).toEqual([`${file} the file: found a folder or device; write a Markdown file`]);
  });

  // Whoever may read every file cannot be refused one: as the system's administrator there is nothing to see here.
  it.skipIf(process.getuid?.() === 0)("as a file that may not be read", () => {
    const folder = folderOfGoodCases();
    writeFileSync(join(folder, file), goodCase);
    chmodSync(join(folder, file), 0o000);
    const { ids, lines } = load(folder);
    expect(ids).toEqual(["23-900", "25-900"]);
    expect(lines).toEqual([
      expect.stringMatching(/^24-001\.md the file: found a file that cannot be opened/),
    ]);
  });

  it("as what an editor or a broken-off save left behind, without a word", () => {
    const folder = folderOfGoodCases();
    for (const name of [".24-001.md", ".24-001.7.half", "24-001.md~", "24-001.md.swp", "notes.txt"]) {
      writeFileSync(join(folder, name), "---\nhalf a ca");
    }
    expect(load(folder)).toMatchObject({ ids: ["23-900", "25-900"], lines: [] });
  });
});

describe("of two files with one id", () => {
  it("the first by name is kept, and the other told which has it", () => {
    const folder = folderOfGoodCases();
    writeFileSync(join(folder, "24-001-again.md"), broken("id: 24-001", "id: 23-900"));
    const { ids, lines, cases } = load(folder);
    expect(ids).toEqual(["23-900", "25-900"]);
    expect(cases.get("23-900")?.file).toBe("23-900.md");
    expect(lines).toEqual([
      "24-001-again.md:2 id: found '23-900'; write an id of its own (23-900.md has it already)",
    ]);
  });
});

describe("an unusual case file is taken", () => {
  const taken = (content: string | Uint8Array) => {
    const { ids, lines, cases } = loadBeside(content);
    expect(lines).toEqual([]);
    expect(ids).toEqual(["23-900", "24-001", "25-900"]);
    return cases.get("24-001");
  };
  const plain = taken.bind(undefined, goodCase);

  it("with a byte-order mark", () => {
    expect(taken(`\uFEFF${goodCase}`)).toEqual(plain());
  });

  it("with the line ends of other systems, its story with plain ones", () => {
    const twoLines = change(goodCase, "It was washed and", "It was washed.\n\nAnd");
    for (const end of ["\r\n", "\r"]) {
      const kase = taken(twoLines.replaceAll("\n", end));
      expect(kase?.story).toBe("It was washed.\n\nAnd it ran.");
      expect(kase).toEqual(taken(twoLines));
    }
  });

  it("with no story", () => {
    expect(taken(change(goodCase, "\nIt was washed and it ran.\n", ""))?.story).toBe("");
  });

  it("with no line end after the last dashes", () => {
    expect(taken(change(goodCase, "---\n\nIt was washed and it ran.\n", "---"))?.story).toBe("");
  });

  it("with fields that are not known, kept as they are", () => {
    expect(taken(withField("benchLamp: { left: on, hours: [1, 2] }"))).toMatchObject({
      benchLamp: { left: "on", hours: [1, 2] },
    });
  });

  it("with a script in every field that takes words: as plain text, and nothing of it is run", () => {
    const script = "<script>globalThis.benchloreRan = true</script>{{x}}$" + "{1 + 1}<img src=x onerror=x>";
    const quoted = JSON.stringify(script);
    const kase = taken(
      [
        ["title: Third valve hangs when warm", `title: ${quoted}`],
        [
          "complaint: The third valve hangs on the way up.",
          `complaint: ${quoted}\nmaker: ${JSON.stringify(script.slice(0, 80))}\nmodel: "{{constructor}}"\narrival: [${quoted}]\nlessons: [${quoted}]`,
        ],
        ["minutes: 2 }", `minutes: 2, note: ${quoted} }`],
        ["role: root", `role: root, note: ${quoted}`],
        ["It was washed and it ran.", script],
      ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    );
    expect(kase).toMatchObject({
      title: script,
      complaint: script,
      maker: script.slice(0, 80),
      model: "{{constructor}}",
      arrival: [script],
      lessons: [script],
      story: script,
    });
    expect(kase?.path[0]).toMatchObject({ note: script });
    expect(kase?.causes[0]).toMatchObject({ note: script });
    expect(globalThis).not.toHaveProperty("benchloreRan");
  });
});

describe("the cases folder", () => {
  it("may be missing: the casebook is empty then", () => {
    expect(load(join(temporaryFolder(), "none"))).toMatchObject({ ids: [], lines: [] });
  });
});
