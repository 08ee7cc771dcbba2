import { nearestWord } from "../../document/nearestWord";
import type { NominalColumn, Table, TableColumn } from "./table";
import { TableFault } from "./tableFault";

/** More classes than this are no classes: measurements or serial numbers. Chosen. */
const mostClasses = 500;

/** What a learner learns from: columns without the class, and the class of every row by its code. */
export type ClassifiedTable = Readonly<{
  columns: readonly TableColumn[];
  labels: Int32Array;
  classes: readonly string[];
  /** Row of the file (from 0, rows with an unknown class counted) by row of this table. */
  rowInFile: Int32Array;
  /** Rows of the file, those of unknown class counted. */
  rowCount: number;
  notes: readonly string[];
}>;

/**
 * Sets the class apart from the attributes. Rows whose class is unknown are passed over with a note; numbers as classes
 * are taken as names.
 *
 * @param className default: the last column
 * @throws TableFault for a class that is not in the table, more than 500 classes, or fewer than two rows of known class
 */
export function classify(table: Table, className?: string): ClassifiedTable {
  const { columns, file, notes } = table;
  const names = columns.map(({ name }) => name);
  const at = className === undefined ? columns.length - 1 : names.indexOf(className);
  const column = columns[at];
  if (!column) {
    const near = className === undefined ? undefined : nearestWord(className, names);
    throw new TableFault(
      file,
      0,
      "the class",
      className === undefined ? "no attribute" : `no attribute "${className}"`,
      near === undefined ? "the name of one that the file has" : `--class ${near}`,
    );
  }
  const target = column.kind === "nominal" ? column : asNames(column.name, column.numbers);
  if (target.values.length > mostClasses) {
    const found = `${target.values.length} values in "${target.name}"`;
    throw new TableFault(file, 0, "the class", found, `at most ${mostClasses}, or --class with another name`);
  }
  const kept: number[] = [];
  for (const [row, code] of target.codes.entries()) if (code >= 0) kept.push(row);
  if (kept.length < 2) {
    throw new TableFault(file, 0, "", `${kept.length} rows of known class`, "at least two");
  }
  const passed = table.rowCount - kept.length;
  return {
    columns: columns.filter((one) => one !== column).map((one) => pick(one, kept)),
    labels: Int32Array.from(kept, (row) => target.codes[row] ?? 0),
    classes: target.values,
    rowInFile: Int32Array.from(kept),
    rowCount: table.rowCount,
    notes: [
      ...notes,
      ...(passed > 0 ? [`${file}: ${passed} rows of unknown class are not used`] : []),
      ...(column.kind === "numeric" ? [`${file}: the numbers of "${column.name}" are taken as names`] : []),
    ],
  };
}

function asNames(name: string, numbers: Float64Array): NominalColumn {
  const values = [...new Set(numbers)].filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  const codeOf = new Map(values.map((value, code) => [value, code]));
  const codes = Int32Array.from(numbers, (value) => codeOf.get(value) ?? -1);
  return { kind: "nominal", name, values: values.map(String), codes };
}

function pick(column: TableColumn, rows: readonly number[]): TableColumn {
  return column.kind === "nominal"
    ? { ...column, codes: Int32Array.from(rows, (row) => column.codes[row] ?? -1) }
    : { ...column, numbers: Float64Array.from(rows, (row) => column.numbers[row] ?? Number.NaN) };
}
