import { stringify } from "csv-stringify/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeText } from "@/lib/exchange/table/decodeText";
import { readTable } from "@/lib/exchange/table/readTable";

const table = (text: string) => {
  const read = readTable(text, "jobs.csv");
  if (!("rows" in read)) throw new Error(`the table must be read; got ${read.received}`);
  return read;
};
const fault = (text: string) => {
  const read = readTable(text, "jobs.csv");
  if ("rows" in read) throw new Error("the table must be refused; it was read");
  return read;
};

describe("a table", () => {
  it.each([",", ";", "\t", "|"])(
    "is read with %j between its cells, with any line ends and a mark before it",
    (separator) => {
      const text = [`Job${separator}Fault`, `1${separator}"a${separator}b"`].join("\r\n");
      expect(table(`\uFEFF${text}\r\n`)).toMatchObject({
        separator,
        headings: ["Job", "Fault"],
        rows: [{ line: 2, cells: ["1", `a${separator}b`] }],
      });
    },
  );

  it("tells the line on which each row begins, past empty rows and cells of several lines", () => {
    expect(table('a,b\n\n1,"x\ny"\n,,\n\n2,z\n').rows).toEqual([
      { line: 3, cells: ["1", "x\ny"] },
      { line: 7, cells: ["2", "z"] },
    ]);
    expect(table("sep=;\na;b\n1;2\n")).toMatchObject({
      separator: ";",
      rows: [{ line: 3, cells: ["1", "2"] }],
    });
  });

  it("takes a quote within a bare cell for inches", () => {
    expect(table('a,b\n12" bell,x\n').rows[0]?.cells).toEqual(['12" bell', "x"]);
  });

  it("names columns without a heading, and the second of one name, by their number", () => {
    expect(table("a,,a\n1,2,3\n").headings).toEqual(["a", "column 2", "a, column 3"]);
  });

  it("is refused with its line where a quote is not closed, and empty or without rows", () => {
    expect(fault('a,b\n1,"x\n2,y\n')).toMatchObject({ received: "a quote that is not closed in its place" });
    expect(fault("")).toMatchObject({ received: "an empty table" });
    expect(fault("a,b\n,\n")).toMatchObject({ line: 1, received: "headings and no row below them" });
    expect(fault(`a\n${"1\n".repeat(20_001)}`)).toMatchObject({ received: "20001 rows" });
  });

  it("of any cells comes back from a general-purpose writer", () => {
    const cell = fc
      .string({ unit: "grapheme", maxLength: 12 })
      .map((text) => text.replaceAll(/[\0\r']/g, "").trim());
    const rows = fc.array(fc.tuple(fc.constant("x"), cell, cell), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.constantFrom(",", ";", "\t"), (cells, delimiter) => {
        const text = stringify([["head", "two", "three"], ...cells], { delimiter, quoted: true });
        expect(table(text).rows.map((row) => row.cells)).toEqual(cells);
      }),
    );
  });
});

describe("the bytes of a file", () => {
  it.each([
    ["UTF-8", Buffer.from("hängt é")],
    ["UTF-8", Buffer.from("\uFEFFhängt é")],
    ["UTF-16", Buffer.from("\uFEFFhängt é", "utf16le")],
    ["Latin-1", Buffer.from("hängt é", "latin1")],
  ])("are read as %s", (encoding, bytes) => {
    expect(decodeText(bytes)).toEqual({ text: "hängt é", encoding });
  });

  it("are no text with a zero byte among them", () => {
    expect(decodeText(Buffer.from([0x50, 0x4b, 0, 1]))).toBeUndefined();
  });
});
