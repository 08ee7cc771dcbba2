import { describe, expect, it } from "vitest";
import { readTable } from "@/lib/evaluation/tables/readTable";

const arff = (data: string, header = "@attribute age {young, 'not young'}\n@attribute size real\n") =>
  `% a remark\n@relation r\n${header}@attribute kind {p, q}\n@data\n${data}`;

describe("reading ARFF", () => {
  it("takes words, numbers, ? as unknown, quotes, comments, CRLF and a byte order mark", () => {
    const text = `\uFEFF${arff("young,1.5,p\n% no row\n'not young',?,q\n\"not young\", -2e3 ,q\n")}`;
    const { columns, labels, classes } = readTable(text.replaceAll("\n", "\r\n"), "a.arff");
    expect(classes).toEqual(["p", "q"]);
    expect([...labels]).toEqual([0, 1, 1]);
    expect(columns).toEqual([
      { kind: "nominal", name: "age", values: ["young", "not young"], codes: Int32Array.of(0, 1, 1) },
      { kind: "numeric", name: "size", numbers: Float64Array.of(1.5, Number.NaN, -2000) },
    ]);
  });

  it("takes a quoted '?' for a word and a backslash as the next character's guard", () => {
    const header = "@attribute 'it\\'s' {'?', a}\n";
    const { columns } = readTable(arff("'?',p\n?,q\n", header), "a.arff");
    expect(columns[0]).toEqual({
      kind: "nominal",
      name: "it's",
      values: ["?", "a"],
      codes: Int32Array.of(0, -1),
    });
  });

  it("reads dates as milliseconds, passes strings over with a note, and rows of unknown class too", () => {
    const header = "@attribute day date\n@attribute told string\n";
    const { columns, notes } = readTable(
      arff("1970-01-02,'a b',p\n?,x,q\n1970-01-01,y,?\n", header),
      "a.arff",
    );
    expect(columns).toEqual([
      { kind: "numeric", name: "day", numbers: Float64Array.of(86_400_000, Number.NaN) },
    ]);
    expect(notes.join("\n")).toMatch(/"told" is not used[\s\S]*1 rows of unknown class/);
  });

  it.each([
    ["an undeclared word", arff("yung,1,p\n"), /^a\.arff:7 age: found 'yung'; write young, or one of/],
    ["a word for a number", arff("young,big,p\n"), /^a\.arff:7 size: found 'big'; write a number/],
    ["a short row", arff("young,1\n"), /^a\.arff:7 row: found 2 values; write 3/],
    ["a sparse row", arff("{0 young}\n"), /^a\.arff:7 row: found a sparse row; write all values/],
    ["an open quote", arff("'young,1,p\n"), /^a\.arff:7 row: found .*; write every quote closed/],
    [
      "a name twice",
      arff("1,1,p\n", "@attribute a real\n@attribute a real\n"),
      /^a\.arff:4 @attribute: found "a" again/,
    ],
    ["a strange type", arff("1,p\n", "@attribute a colour\n"), /write a type: \{values\}, numeric/],
    ["no data", "@relation r\n@attribute a real\n", /^a\.arff the file: found no @data line/],
    ["no rows", arff(""), /found 0 rows of known class; write at least two/],
  ])("says where %s stands and what to write", (_, text, message) => {
    expect(() => readTable(text, "a.arff")).toThrow(message);
  });
});

describe("reading CSV", () => {
  it("takes a column of numbers as numbers, others as words, and nothing, ? and NA as unknown", () => {
    const { columns, classes } = readTable('a,b,kind\n1,x,p\n,"?",q\nNA,?,p\n', "a.csv");
    expect(columns).toEqual([
      { kind: "numeric", name: "a", numbers: Float64Array.of(1, Number.NaN, Number.NaN) },
      { kind: "nominal", name: "b", values: ["x", "?"], codes: Int32Array.of(0, 1, -1) },
    ]);
    expect(classes).toEqual(["p", "q"]);
  });

  it("takes quoted separators, doubled quotes and line ends by RFC 4180", () => {
    const { columns } = readTable('a,kind\r\n"x, ""y""",p\r\n"z\r\nz",q\r\n', "a.csv");
    expect(columns[0]).toMatchObject({ values: ['x, "y"', "z\r\nz"] });
  });

  it("takes the class by name, and numbers as its names", () => {
    const { classes, columns } = readTable("grade,a\n2,x\n1,y\n", "a.csv", "grade");
    expect(classes).toEqual(["1", "2"]);
    expect(columns.map(({ name }) => name)).toEqual(["a"]);
  });

  it.each([
    ["a long record", "a,b\n1,2\n1,2,3\n", /^a\.csv:3 record: found 3 fields; write 2/],
    ["an open quote", 'a,b\n"1,2\n3,4\n', /^a\.csv:2 record: found a quote that is not closed/],
    ["a name twice", "a,a\n1,2\n", /^a\.csv:1 header: found "a" again/],
    ["an empty file", "", /^a\.csv the file: found nothing/],
  ])("says where %s stands and what to write", (_, text, message) => {
    expect(() => readTable(text, "a.csv")).toThrow(message);
  });

  it("offers the nearest name for a class that is not there", () => {
    expect(() => readTable("grade,a\n2,x\n", "a.csv", "grad")).toThrow(
      /no attribute "grad"; write --class grade/,
    );
  });
});
