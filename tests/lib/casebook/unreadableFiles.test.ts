import { describe, expect, it } from "vitest";
import { goodCase } from "@/tests/fixtures/goodCase";
import { type BadFile, broken, file, loadBeside, withField } from "./caseFolder";

const plainYaml = "plain YAML: 'field: value' lines, text with a colon in quotes";

const unreadable: readonly BadFile[] = [
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

describe("a case file that cannot be read is set aside, says what to mend, and leaves the cases beside it standing", () => {
  it.each(unreadable)("with $title", ({ content, lines }) => {
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
