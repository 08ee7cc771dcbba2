import { nominalBuilder } from "./nominalBuilder";
import { numericBuilder } from "./numericBuilder";
import { readNumber } from "./readNumber";
import { splitCsv } from "./splitCsv";
import type { Table, TableColumn } from "./table";
import { TableFault } from "./tableFault";

/** What stands for unknown in a field without quotes. */
const unknownWords = new Set(["", "?", "NA"]);

/**
 * Reads a CSV file with a header: a column is numeric if every known value in it is a number, otherwise nominal.
 *
 * @param file as messages name it
 * @throws TableFault for no header, a name given twice or not at all, a record of another length than the header
 */
export function readCsv(text: string, file: string): Table {
  const [header, ...records] = splitCsv(text, file);
  if (!header) throw new TableFault(file, 0, "", "nothing", "a header line and then the rows");
  const names = header.fields.map(({ text: name }) => name);
  for (const [at, name] of names.entries()) {
    if (name === "") {
      throw new TableFault(
        file,
        header.line,
        "header",
        `no name in column ${at + 1}`,
        "a name for every column",
      );
    }
    if (names.indexOf(name) !== at) {
      throw new TableFault(file, header.line, "header", `"${name}" again`, "every name once");
    }
  }
  for (const { line, fields } of records) {
    if (fields.length === names.length) continue;
    throw new TableFault(file, line, "record", `${fields.length} fields`, `${names.length}, one a column`);
  }
  const cellsOf = (at: number) =>
    records.map(({ fields }) => {
      const field = fields[at];
      return field === undefined || (!field.quoted && unknownWords.has(field.text)) ? undefined : field.text;
    });
  return {
    file,
    columns: names.map((name, at) => columnOf(name, cellsOf(at))),
    rowCount: records.length,
    notes: [],
  };
}

function columnOf(name: string, cells: readonly (string | undefined)[]): TableColumn {
  const known = cells.filter((cell) => cell !== undefined);
  const isNumeric = known.length > 0 && known.every((cell) => readNumber(cell) !== undefined);
  const builder = isNumeric ? numericBuilder(name, readNumber, "a number") : nominalBuilder(name);
  for (const cell of cells) builder.add(cell);
  return builder.build();
}
