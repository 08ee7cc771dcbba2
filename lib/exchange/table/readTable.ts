import { CsvError, parse } from "csv-parse/sync";
import { z } from "zod";
import type { ContentProblem } from "../../document/contentProblem";
import { plainCell } from "../cells/plainCell";
import { guessSeparator, type Separator } from "./guessSeparator";

/** A row of a table: its cells as words, and the line of the file on which it begins. */
export type TableRow = Readonly<{ line: number; cells: readonly string[] }>;
/** A table with a row of headings; a row may have fewer cells than there are headings, never more. */
export type ReadTable = Readonly<{
  file: string;
  separator: Separator;
  headings: readonly string[];
  rows: readonly TableRow[];
}>;

/** As many rows as are taken in one file. Chosen: twice what a busy shop does in ten years. */
const mostRows = 20_000;
const mostColumns = 200;

const recordsSchema = z.array(
  z.object({ record: z.array(z.string()), info: z.object({ lines: z.number() }) }),
);

/**
 * Reads a table in CSV: quoted by RFC 4180; separated by comma, semicolon, tab or bar; any line ends; empty rows passed over.
 * A first line `sep=;`, as spreadsheets write it, is obeyed. A quote within a bare cell is taken as it stands: it means inches.
 *
 * @param file as problems name it
 * @returns the table, or what keeps it from being read
 * Source: RFC 4180, section 2.
 */
export function readTable(text: string, file: string): ReadTable | ContentProblem {
  const fault = (line: number, received: string, expected: string): ContentProblem => ({
    file,
    line,
    field: "",
    received,
    expected,
  });
  const plain = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const [told, toldSeparator] = /^sep=([,;|\t])\n/i.exec(plain) ?? ["", undefined];
  const body = plain.slice(told.length);
  const separator = guessSeparator(toldSeparator === undefined ? body : `${toldSeparator}\n`);
  try {
    const records = recordsSchema.parse(
      parse(body, {
        delimiter: separator,
        info: true,
        record_delimiter: "\n",
        relax_column_count: true,
        relax_quotes: true,
        trim: false,
      }),
    );
    const lines = told === "" ? 0 : 1;
    const rows = records
      .map(({ record, info }) => ({
        line: info.lines + lines - record.join("").split("\n").length + 1,
        cells: record.map((cell) => plainCell(cell.trim())),
      }))
      .filter(({ cells }) => cells.some((cell) => cell !== ""));
    const [head, ...rest] = rows;
    if (!head) return fault(0, "an empty table", "a row of headings, and then a row a job");
    if (rest.length === 0) return fault(head.line, "headings and no row below them", "a row a job");
    if (rest.length > mostRows) return fault(0, `${rest.length} rows`, `at most ${mostRows} rows a file`);
    if (head.cells.length > mostColumns)
      return fault(head.line, `${head.cells.length} columns`, `at most ${mostColumns} columns`);
    return { file, separator, headings: nameColumns(head.cells), rows: rest };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error.lines === "number" ? error.lines : 0;
    return fault(
      line,
      "a quote that is not closed in its place",
      'a closing quote before the separator, and "" for a quote inside',
    );
  }
}

/** Every column has a name of its own: one without a heading is told by its number, a second of one name too. */
function nameColumns(cells: readonly string[]): string[] {
  return cells.map((cell, at) =>
    cell === "" || cells.indexOf(cell) !== at ? [cell, `column ${at + 1}`].filter(Boolean).join(", ") : cell,
  );
}
