import { chmodSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { formatProblem } from "@/lib/document/contentProblem";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const file = "24-001.md";
const broken = (from: string, to: string) => change(goodCase, from, to);
const withField = (line: string) => broken("title:", `${line}\ntitle:`);

/** A folder with a good case before the bad one by name and another after it. */
function folderOfGoodCases(): string {
  const folder = temporaryFolder();
  for (const id of ["23-900", "25-900"]) {
    writeFileSync(join(folder, `${id}.md`), broken("id: 24-001", `id: ${id}`));
  }
  return folder;
}

function load(folder: string) {
  const { cases, problems } = loadCasebook(folder, smallVocabulary);
  return { cases, ids: [...cases.keys()], lines: problems.map(formatProblem) };
}

function loadBeside(content: string | Uint8Array) {
  const folder = folderOfGoodCases();
  writeFileSync(join(folder, file), content);
  return load(folder);
}

type Row = Readonly<{ title: string; content: string | Uint8Array; lines: readonly (string | RegExp)[] }>;

const plainYaml = "plain YAML: 'field: value' lines, text with a colon in quotes";
const aDay = "a day that exists, written year-month-day, such as 2026-03-09";
const anId = "lower-case words joined by hyphens, such as casing-dented";
const aStep = "a step that begins with check, swap, plugs, bore, leak or repair";

const unreadable: readonly Row[] = [
  {
    title: "a quote that is never closed",
    content: broken("Third valve hangs when warm", '"Third valve hangs'),
    lines: [
      /^24-001\.md:\d+ the file: found YAML that cannot be read \(.*quote.*\); write the missing quote/,
    ],
  },
  {
    title: "a colon in words without quotes",
    content: broken("Third valve hangs when warm", "Third valve: hangs"),
    lines: [new RegExp(`^24-001\\.md:3 the file: found YAML that cannot be read .*; write ${plainYaml}$`)],
  },
  {
    title: "a bracket that is never closed",
    content: broken("minutes: 2 }", "minutes: 2"),
    lines: [/^24-001\.md:11 the file: found YAML that cannot be read \('Flow map/],
  },
  {
    title: "a tab for an indent",
    content: broken("  - { check", "\t- { check"),
    lines: [
      /^24-001\.md:10 the file: .*Tabs.*; write spaces where the tab stands$/,
      /^24-001\.md:11 the file/,
    ],
  },
  {
    title: "a field that stands twice",
    content: broken("minutes: 12", "minutes: 12\nminutes: 13"),
    lines: [`${file}:16 the file: found the field 'minutes' a second time; write each field once`],
  },
  {
    title: "no line of dashes after the fields",
    content: broken("---\n\nIt was", "It was"),
    lines: [`${file}:17 the file: found no second '---' line; write '---' after the last field`],
  },
  {
    title: "a line after the fields that only begins with dashes",
    content: broken("---\n\nIt was", "-----\n\nIt was"),
    lines: [`${file}:16 the file: found '-----'; write '---' alone after the last field`],
  },
  {
    title: "no front matter",
    content: "The third valve hangs.\n",
    lines: [
      `${file}:1 the file: found 'The third valve hangs.'; write '---' as the first line, before the fields`,
    ],
  },
  {
    title: "nothing in the file",
    content: "",
    lines: [
      `${file}:1 the file: found an empty file; write a line '---', the fields, a line '---', then the story`,
    ],
  },
  {
    title: "nothing but a byte-order mark and blank lines",
    content: "\uFEFF\r\n\r\n",
    lines: [/^24-001\.md:1 the file: found an empty file;/],
  },
  {
    title: "front matter that is a list",
    content: "---\n- id: 24-001\n---\n",
    lines: [`${file}:2 the file: found [{"id":"24-001"}]; write fields under it`],
  },
  {
    title: "front matter that holds only a remark",
    content: "---\n# later\n---\nStory.\n",
    lines: [`${file}:2 the file: found nothing; write fields under it`],
  },
  {
    title: "two documents in one front matter",
    content: broken("title:", "...\ntitle:"),
    lines: [
      `${file}:4 the file: found a second document; write one set of fields, with no '...' or '---' among them`,
    ],
  },
  {
    title: "aliases that swell to billions of words",
    content: withField(
      [
        "a: &a [x, x, x, x, x, x, x, x, x]",
        "b: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]",
        "c: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]",
        "d: [*c, *c, *c, *c, *c, *c, *c, *c, *c]",
      ].join("\n"),
    ),
    lines: [
      ...Array<string>(9).fill(`${file}:4 the file: found the alias *a; write the value itself`),
      ...Array<string>(9).fill(`${file}:5 the file: found the alias *b; write the value itself`),
      ...Array<string>(9).fill(`${file}:6 the file: found the alias *c; write the value itself`),
    ],
  },
  {
    title: "an alias for a key",
    content: withField("a: &a lamp\n*a : left"),
    lines: [`${file}:4 the file: found the alias *a; write the value itself`],
  },
  {
    title: "a tag that asks for a function",
    content: broken("Third valve hangs when warm", "!!js/function 'function () { return 1; }'"),
    lines: [/^24-001\.md:3 the file: found YAML .*tag.*; write a plain value with no ! tag$/],
  },
  {
    title: "front matter in JavaScript",
    content: "---js\nglobalThis.benchloreRan = true\n---\n",
    lines: [`${file}:1 the file: found '---js'; write '---' alone: front matter is YAML and never runs code`],
  },
  {
    title: "front matter in JSON",
    content: '---json\n{ "id": "24-001" }\n---\n',
    lines: [
      `${file}:1 the file: found '---json'; write '---' alone: front matter is YAML and never runs code`,
    ],
  },
  {
    title: "a field that reaches for every object's prototype",
    content: withField("__proto__: { polluted: true }"),
    lines: [`${file}:3 the file: found the key __proto__; write another name for this field`],
  },
  {
    title: "a field named constructor, deep in a step",
    content: broken("minutes: 10 }", "minutes: 10, lamp: { left: { constructor: 1 } } }"),
    lines: [`${file}:11 the file: found the key constructor; write another name for this field`],
  },
  {
    title: "a list for a key",
    content: withField("? [lamp, left]\n: 1"),
    lines: [`${file}:3 the file: found a list or fields as a key; write a word as the key`],
  },
  {
    title: "lists nested a hundred thousand deep",
    content: withField(`deep: ${"[".repeat(100_000)}${"]".repeat(100_000)}`),
    lines: [
      `${file}:3 the file: found lists or fields more than 64 deep; write them at most 64 deep in one another`,
    ],
  },
  {
    title: "fields nested a few hundred deep",
    content: withField(`deep: ${"{ a: ".repeat(300)}1${" }".repeat(300)}`),
    lines: [
      `${file}:3 the file: found lists or fields more than 64 deep; write them at most 64 deep in one another`,
    ],
  },
  {
    title: "a zero byte",
    content: broken("It was washed", "It was\0washed"),
    lines: [`${file}:1 the file: found a zero byte; write plain text`],
  },
  {
    title: "bytes that are not UTF-8",
    content: Buffer.concat([Buffer.from(goodCase), Uint8Array.of(0xe9, 0x20, 0xff)]),
    lines: [`${file} the file: found bytes that are not UTF-8; write the file saved as UTF-8 text`],
  },
  {
    title: "a story of ten megabytes",
    content: goodCase + "It ran. ".repeat(1_310_720),
    lines: [/^24-001\.md the file: found 1048\d+ bytes; write at most 1000000 characters a file$/],
  },
  {
    title: "a story of a million and one characters",
    content: goodCase.padEnd(1_000_001, "."),
    lines: [`${file}:1 the file: found 1000001 characters; write at most 1000000 characters a file`],
  },
];

const unsound: readonly Row[] = [
  {
    title: "values of the wrong type, all told at once",
    content: [
      ["title: Third valve hangs when warm", "title: [a, b]"],
      ["status: closed", "status: closd"],
      ["received: 2024-03-04", "received: 20240304"],
      ["minutes: 12", "minutes: a dozen"],
    ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    lines: [
      `${file}:3 title: found ["a","b"]; write words`,
      `${file}:4 status: found 'closd'; write 'closed' (one of: open, closed)`,
      `${file}:6 received: found 20240304; write ${aDay}`,
      `${file}:15 minutes: found 'a dozen'; write a number`,
    ],
  },
  {
    title: "fields that are missing, all told at once",
    content: "---\nid: 24-001\n---\n",
    lines: ["title", "status", "instrument", "received", "complaint"].map(
      (field) => new RegExp(`^24-001\\.md:2 ${field}: found nothing; write `),
    ),
  },
  {
    title: "an id that is a bare number",
    content: broken("id: 24-001", "id: 24"),
    lines: [`${file}:2 id: found 24; write words in quotes, such as '24'`],
  },
  {
    title: "an id that climbs out of the folder",
    content: broken("id: 24-001", "id: ../../etc/x"),
    lines: [`${file}:2 id: found '../../etc/x'; write ${anId}`],
  },
  {
    title: "an id with a zero byte behind a backslash",
    content: broken("id: 24-001", 'id: "24-001\\0"'),
    lines: [`${file}:2 id: found '24-001 '; write ${anId}`],
  },
  {
    title: "ids that the vocabulary does not know, each with the one that was meant",
    content: [
      ["instrument: cornet", "instrument: cornt"],
      ["check: valve-travel", "check: valve-travle"],
      ["repair: clean-and-oil", "repair: clean-an-oil"],
      ["cause: gummed-oil", "cause: gumed-oil"],
    ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    lines: [
      `${file}:5 instrument: found 'cornt'; write 'cornet', or another known instrument`,
      `${file}:10 path.0.check: found 'valve-travle'; write 'valve-travel', or another known check`,
      `${file}:11 path.1.repair: found 'clean-an-oil'; write 'clean-and-oil', or another known repair`,
      `${file}:13 causes.0.cause: found 'gumed-oil'; write 'gummed-oil', or another known cause`,
    ],
  },
  {
    title: "an instrument that is like none there is",
    content: broken("instrument: cornet", "instrument: hurdy-gurdy"),
    lines: [`${file}:5 instrument: found 'hurdy-gurdy'; write the id of a known instrument`],
  },
  {
    title: "an outcome that its check does not have",
    content: broken("found: hangs", "found: hang"),
    lines: [`${file}:10 path.0.found: found 'hang'; write 'hangs', or another known outcome of valve-travel`],
  },
  {
    title: "a place in the stroke that the check of places does not have",
    content: broken("where: halfway", "where: halfwy"),
    lines: [
      `${file}:10 path.0.where: found 'halfwy'; write 'halfway', or another known outcome of where-it-catches`,
    ],
  },
  {
    title: "a turn that the words of reading do not know",
    content: broken(
      "check: valve-travel, part: valve 3, found: hangs, where: halfway",
      "swap: [piston 3, casing 1], found: sticks, turned: hafl",
    ),
    lines: [`${file}:10 path.0.turned: found 'hafl'; write 'half', or another known turn of swapTurns`],
  },
  {
    title: "a part that is not known",
    content: broken("part: valve 3, found", "part: valv 3, found"),
    lines: [`${file}:10 path.0.part: found 'valv'; write 'valve', or another known part`],
  },
  {
    title: "a part that is no part at all",
    content: broken("part: valve 3, found", "part: the third valve, found"),
    lines: [
      `${file}:10 path.0.part: found 'the third valve'; write a part id with its number, such as: casing 2, bell-stem, other valve`,
    ],
  },
  {
    title: "casing 9 on an instrument of three valves",
    content: broken("part: valve 3, role", "part: casing 9, role"),
    lines: [`${file}:13 causes.0.part: found 'casing 9'; write a number from 1 to 3 on this instrument`],
  },
  {
    title: "a first thought that is no cause",
    content: withField("firstThought: casing-dentd"),
    lines: [`${file}:3 firstThought: found 'casing-dentd'; write 'casing-dented', or another known cause`],
  },
  {
    title: "the 31st of February",
    content: broken("received: 2024-03-04", "received: 2024-02-31"),
    lines: [`${file}:6 received: found '2024-02-31'; write ${aDay}`],
  },
  {
    title: "the 29th of February of a year that has none",
    content: broken("received: 2024-03-04", "received: 2023-02-29"),
    lines: [`${file}:6 received: found '2023-02-29'; write ${aDay}`],
  },
  {
    title: "closed before it was received",
    content: broken("closed: 2024-03-06", "closed: 2024-03-03"),
    lines: [`${file}:7 closed: found '2024-03-03'; write a day no earlier than the day it was received`],
  },
  {
    title: "fewer minutes than none",
    content: broken("minutes: 10", "minutes: -5"),
    lines: [`${file}:11 path.1.minutes: found -5; write a number of 0 or more`],
  },
  {
    title: "minutes that are no number",
    content: broken("minutes: 10", "minutes: .nan"),
    lines: [`${file}:11 path.1.minutes: found NaN; write a number`],
  },
  {
    title: "minutes without end",
    content: broken("minutes: 12", "minutes: .inf"),
    lines: [`${file}:15 minutes: found Infinity; write a number`],
  },
  {
    title: "more minutes than two working weeks",
    content: broken("minutes: 12", "minutes: 4801"),
    lines: [`${file}:15 minutes: found 4801; write a number of 4800 or less`],
  },
  {
    title: "a step of no kind there is",
    content: broken("check: valve-travel", "look: valve-travel"),
    lines: [
      `${file}:10 path.0: found {"look":"valve-travel","part":"valve 3","found":"hangs","wh…; write ${aStep}`,
    ],
  },
  {
    title: "a step in running words",
    content: broken(
      "  - { repair: clean-and-oil, part: valve 3, result: fixed, minutes: 10 }",
      "  - oiled it",
    ),
    lines: [`${file}:11 path.1: found 'oiled it'; write ${aStep}`],
  },
  {
    title: "a step of two kinds at once",
    content: broken("result: fixed", "result: fixed, check: valve-travel, found: free"),
    lines: [`${file}:11 path.1.repair: found repair beside check; write a step of its own for it`],
  },
  {
    title: "a repair that does not say how it ended",
    content: broken(" result: fixed,", ""),
    lines: [`${file}:11 path.1.result: found nothing; write one of: fixed, better, no-change, harm`],
  },
  {
    title: "a swap test with one part",
    content: broken(
      "{ check: valve-travel, part: valve 3, found: hangs,",
      "{ swap: [piston 3], found: sticks,",
    ),
    lines: [`${file}:10 path.0.swap: found ["piston 3"]; write at least 2 entries`],
  },
  {
    title: "a path of ten thousand steps",
    content: broken(
      "path:",
      `path:\n${"  - { check: valve-travel, found: free }\n".repeat(10_000)}`.trimEnd(),
    ),
    lines: [/^24-001\.md:10 path: found \[\{"check".*; write at most 200 entries$/],
  },
  {
    title: "closed, with no cause",
    content: broken("causes:\n  - { cause: gummed-oil, part: valve 3, role: root }\n", ""),
    lines: [`${file}:2 causes: found nothing; write at least one cause with role: root`],
  },
  {
    title: "closed, with a cause that only helped",
    content: broken("role: root", "role: contributing"),
    lines: [
      `${file}:13 causes: found [{"cause":"gummed-oil","part":"valve 3","role":"contributin…; write at least one cause with role: root`,
    ],
  },
  {
    title: "closed, without day, outcome or minutes",
    content: [
      ["closed: 2024-03-06\n", ""],
      ["outcome: fixed\n", ""],
      ["minutes: 12\n", ""],
    ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    lines: [
      /:2 closed: found nothing; write the day the job was closed/,
      /:2 outcome: found nothing; write how it ended/,
      /:2 minutes: found nothing; write the minutes that the job took$/,
    ],
  },
];

describe("a bad case file is set aside, says what to mend, and leaves the cases beside it standing", () => {
  it.each([...unreadable, ...unsound])("with $title", ({ content, lines }) => {
    const loaded = loadBeside(content);
    expect(loaded.ids).toEqual(["23-900", "25-900"]);
    expect(loaded.lines).toEqual(
      lines.map((line) => (typeof line === "string" ? line : expect.stringMatching(line))),
    );
  });

  it("leaves nothing behind in the program that read it", () => {
    loadBeside("---js\nglobalThis.benchloreRan = true\n---\n");
    loadBeside(withField("__proto__: { polluted: true }"));
    expect(globalThis).not.toHaveProperty("benchloreRan");
    expect({}).not.toHaveProperty("polluted");
  });
});

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
