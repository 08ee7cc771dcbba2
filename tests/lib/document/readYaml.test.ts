import { describe, expect, it } from "vitest";
import { readAnyYaml } from "@/lib/document/readAnyYaml";
import { readYaml } from "@/lib/document/readYaml";

const text = `title: Third valve
path:
  - { check: travel, minutes: 2 }
  - repair: clean
    minutes: 3
quoted:
  minutes: 5
`;
const told = (yaml: string) =>
  readYaml(yaml, "a.yaml").problems.map(({ line, received, expected }) => `${line} ${received}; ${expected}`);

describe("YAML as data", () => {
  it("is read by the core schema: days, yes and octal-like numbers are not turned into something else", () => {
    const { data, problems } = readYaml("a: 2024-03-04\nb: yes\nc: 010\nd: .5\ne: true\nf: ~\n", "a.yaml");
    expect(problems).toEqual([]);
    expect(data).toEqual({ a: "2024-03-04", b: "yes", c: 10, d: 0.5, e: true, f: null });
  });

  it("takes `<<` for a field like any other and merges nothing", () => {
    expect(readYaml("<<: { a: 1 }\nb: 2\n", "a.yaml").data).toEqual({ "<<": { a: 1 }, b: 2 });
  });

  it("is nothing where the text is empty", () => {
    expect(readYaml("", "a.yaml")).toMatchObject({ data: null, problems: [] });
  });
});

describe("the line of a field", () => {
  const { lineOf } = readYaml(text, "a.md", 2);
  it.each([
    [["title"], 2],
    [["path", 0, "minutes"], 4],
    [["path", 1], 5],
    [["path", 1, "minutes"], 6],
    [["quoted", "minutes"], 8],
  ])("%j counts from the line on which the text begins", (path, line) => {
    expect(lineOf(path)).toBe(line);
  });

  it("is its nearest parent's where the field is missing", () => {
    expect(lineOf(["path", 1, "result"])).toBe(5);
    expect(lineOf(["quoted", "price"])).toBe(8);
    expect(lineOf(["outcome"])).toBe(2);
    expect(lineOf(["title", "deeper"])).toBe(2);
  });
});

describe("YAML that is refused", () => {
  it("says every problem at once, each with its line", () => {
    expect(told("a: 1\na: 2\nb: !!js/function x\nc: { constructor: 1 }\n")).toEqual([
      expect.stringMatching(/^3 .*tag.*; a plain value with no ! tag$/),
      "2 the field 'a' a second time; each field once",
      "4 the key constructor; another name for this field",
    ]);
  });

  it("holds an alias, wherever it stands", () => {
    expect(told("a: &a 1\nb: *a\n")).toEqual(["2 the alias *a; the value itself"]);
    expect(told("a: &a x\n*a : 1\n")).toEqual(["2 the alias *a; the value itself"]);
  });

  it.each(["__proto__", "prototype", "constructor", '"constructor"'])(
    "has a field %s at any depth",
    (key) => {
      expect(told(`a:\n  - b:\n      ${key}: 1\n`)).toEqual([
        `3 the key ${key.replaceAll('"', "")}; another name for this field`,
      ]);
    },
  );

  it("has a list or fields for a key", () => {
    expect(told("? [a, b]\n: 1\n")).toEqual(["1 a list or fields as a key; a word as the key"]);
  });

  it("has a field twice, at any depth and however it is written", () => {
    expect(told('a: [{ b: 1, "b": 2 }]\n')).toEqual(["1 the field 'b' a second time; each field once"]);
    expect(told("1: a\n'1': b\n")).toEqual(["2 the field '1' a second time; each field once"]);
  });

  it("is more than one document", () => {
    expect(told("a: 1\n---\nb: 2\n")).toEqual([
      "2 a second document; one set of fields, with no '...' or '---' among them",
    ]);
  });

  it("is nested more than 64 deep, however far", () => {
    const nested = (depth: number) => `a: ${"[".repeat(depth - 1)}${"]".repeat(depth - 1)}\n`;
    const deep = ["1 lists or fields more than 64 deep; them at most 64 deep in one another"];
    expect(told(nested(64))).toEqual([]);
    expect(told(nested(65))).toEqual(deep);
    expect(told(nested(300_000))).toEqual(deep);
    expect(told(`a:\n  ${"- ".repeat(300_000)}\n`)).toEqual(deep.map((line) => line.replace("1", "2")));
  });

  it("brings no data with it", () => {
    expect(readYaml("a: 1\na: 2\n", "a.yaml").data).toBeUndefined();
  });
});

describe("YAML that is read the short way", () => {
  it("is not composed unless a line is asked for", () => {
    const reading = readYaml(text, "a.md", 2);
    expect(reading.data).toStrictEqual(readAnyYaml(text, "a.md", 2).data);
    expect(reading.lineOf(["quoted", "minutes"])).toBe(8);
  });
});
