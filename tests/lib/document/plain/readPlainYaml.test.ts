import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPlainYaml } from "@/lib/document/plain/readPlainYaml";
import { readAnyYaml } from "@/lib/document/readAnyYaml";
import { readYaml } from "@/lib/document/readYaml";
import { goodCase } from "@/tests/fixtures/goodCase";

const caseFields = goodCase.split("---\n")[1] ?? "";

/** Holds the short way against the long one: where it reads a text at all, the text is sound and means the same. */
function expectSameOrNone(text: string): void {
  const plain = readPlainYaml(text);
  if (plain === undefined) return;
  const { data, problems } = readAnyYaml(text, "a.yaml");
  expect(problems).toEqual([]);
  expect(plain).toStrictEqual(data);
}

describe("plain YAML", () => {
  it("is what case files are written in", () => {
    expect(readPlainYaml(caseFields)).toMatchObject({
      title: "Third valve hangs when warm",
      received: "2024-03-04",
      path: [{ check: "valve-travel", minutes: 2 }, { repair: "clean-and-oil" }],
      minutes: 12,
    });
    expectSameOrNone(caseFields);
  });

  it.each([
    ["a: 1\nb: -2.50\nc: 0\nd: 007x\ne: 2024-03-04\nf: .669 in\n"],
    ["a: true\nb: false\nc: yes\nd: no way\n"],
    [`a: "with: colon # and sign"\nb: 'it''s'\nc: ""\n`],
    ["a:\nb:\n  c: 1\n  d:\n    - e\n    - f: 1\n      g: [1, [2, 3], {}]\n    - { h: i, j: [] }\n"],
    ["a:\n- b\n- c: d\n  e:\n  - f\ng: h\n"],
    ["a: he said 12:30, or [so] {I think} & more\n"],
    ["a: Größe ½ in, ø 16\nb: £5 or (6)\n"],
    ["a: 1"],
    ["# remark\n\na: 1\n\n  # another: [\nb:\n# and one\n  - c\n\n  - d\n#"],
    [`"a b": 1\n"true": 2\nfalse: 3\nw/o: 4\n1st: 5\n+: 6\n½: 7\nmic'd: 8\n`],
    [`a: { true: 1, "false": 2, "b, c": 3 }\nb: "say \\"no\\" \\\\ [so]"\n`],
    ["- a\n- b: 1\n  c:\n    d: e\n\n# next\n- [f]\n"],
  ])("%j is read the short way, to the same fields", (text) => {
    expect(readPlainYaml(text)).toStrictEqual(readAnyYaml(text, "a.yaml").data);
  });

  it.each([
    ["a: 1\na: 2\n"],
    ["a: { b: 1, b: 2 }\n"],
    ["a: &x 1\n"],
    ["a: *x\n"],
    ["a: !!js/function x\n"],
    ["__proto__: 1\n"],
    ["a: { constructor: 1 }\n"],
    ["a: 1 # remark\n"],
    ["a: |\n  text\n"],
    ["a: >-\n  text\n"],
    ["a: text\n  goes on\n"],
    ["a: b: c\n"],
    ["a: [b: c]\n"],
    ["a: { b }\n"],
    ["a: { b: }\n"],
    ["a: [1, ]\n"],
    ["a: [1\n"],
    ['a: "x\\n"\n'],
    ['a: "x\n'],
    ["a: 010\n"],
    ["a: 0x1f\n"],
    ["a: 1e3\n"],
    ["a: .inf\n"],
    ["a: -0\n"],
    ["a: ~\n"],
    ["a: Null\n"],
    ["null: 1\n"],
    ["? a\n: 1\n"],
    ["<<: { a: 1 }\n"],
    ["a: 1\n---\nb: 2\n"],
    ["a: 1\n...\n"],
    ["a:\t1\n"],
    ["a: 1 \n"],
    [" a: 1\n"],
    ["a:\n  b: 1\n c: 2\n"],
    ["a: - b\n"],
    ["a:\n  - b\n  c: 1\n"],
    [""],
    ["\n"],
    ["# remark\n"],
    [`"__proto__": 1\n`],
    [`a: { "constructor": 1 }\n`],
    [`true: 1\n"true": 2\n`],
    ["1: a\n"],
    ["+1: a\n"],
    ["1e3: a\n"],
    ["True: a\n"],
    [`"a\\"b": 1\n`],
    ["- a\nb: 1\n"],
    ["b: 1\n- a\n"],
    ["a: text\n# remark\n  goes on\n"],
    ["a: text\n\n  goes on\n"],
    ["a: 1\n  \nb: 2\n"],
    [`a: ${"[".repeat(9)}${"]".repeat(9)}\n`],
  ])("%j is left to the reader of all YAML", (text) => {
    expect(readPlainYaml(text)).toBeUndefined();
  });

  it("means the same the long way, whatever pieces a text is put together of", () => {
    const piece = fc.constantFrom(
      ..."a,b,key,null,true,False,1,-2,.5,010,1e3,-,--,---,...,~,:,#,?,!,&x,*x,|,>,%,@,\",',\\,[,],{,},(,),half way,it's,2024-01-02,12:30,Größe"
        .split(",")
        .concat([
          ", ",
          ",",
          ": ",
          ": ",
          ": ",
          " ",
          "  ",
          "- ",
          "- ",
          " #",
          '"a"',
          "'b'",
          "''",
          "{ a: 1 }",
          '{ "a": 1, true: 2 }',
          '"\\"',
          '\\"',
          "[b, c]",
        ]),
    );
    const line = fc
      .tuple(
        fc.constantFrom("", "", "", "  ", "  ", "    ", " "),
        fc.constantFrom("", "", "- ", "-"),
        fc.constantFrom(
          "",
          "a: ",
          "b: ",
          "c:",
          "d: ",
          "__proto__: ",
          "true: ",
          '"a": ',
          "1: ",
          "1st: ",
          "+: ",
          "w/o: ",
          "# ",
        ),
        fc.array(piece, { maxLength: 5 }).map((pieces) => pieces.join("")),
      )
      .map((parts) => parts.join(""));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (lines) => expectSameOrNone(lines.join("\n"))),
      { numRuns: 5000 },
    );
  });

  it("means the same the long way, wherever a sound file was changed", () => {
    const sign = fc.constantFrom(..."abz019 \n\t\"'[]{},:#&*!|>%@`?-.~\\é\u0085\u00a0");
    const place = fc.nat({ max: caseFields.length });
    const change = fc.tuple(place, fc.nat({ max: 2 }), fc.array(sign, { maxLength: 2 }));
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 2 }), (changes) => {
        let text = caseFields;
        for (const [at, cut, put] of changes) text = text.slice(0, at) + put.join("") + text.slice(at + cut);
        expectSameOrNone(text);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("the line of a field of plain YAML", () => {
  it("is the one that the long way tells", () => {
    const { lineOf } = readYaml(caseFields, "a.md", 2);
    const whole = readAnyYaml(caseFields, "a.md", 2);
    for (const path of [[], ["id"], ["path", 1, "result"], ["path", 1, "note"], ["causes", 0], ["nothing"]]) {
      expect(lineOf(path)).toBe(whole.lineOf(path));
    }
    expect(lineOf(["path", 1, "result"])).toBe(11);
  });
});
