import { splitCsv } from "./splitCsv";
import { TableFault } from "./tableFault";

/** What the rows of the data file are, for checking a fold file against it. */
export type FoldRows = Readonly<{
  rowCount: number;
  /** The class of a row of the file in words; undefined where it is unknown or not to be checked. */
  classOf: (row: number) => string | undefined;
}>;

/**
 * Reads a fold file: a header, then one record a row of the data: row (from 0), fold (whole, 0 or more) and, if wanted, the row's
 * class, which must then be the data's.
 *
 * @returns the fold of every row of the data file
 * @throws TableFault for a row that is missing, strange or there twice, a fold that is no whole number, fewer than two folds,
 *   or a class that is not the data's
 */
export function readFolds(text: string, file: string, { rowCount, classOf }: FoldRows): Int32Array {
  const [header, ...records] = splitCsv(text, file);
  if (!header)
    throw new TableFault(file, 0, "", "nothing", "a header line and then one line a row of the data");
  const folds = new Int32Array(rowCount).fill(-1);
  for (const { line, fields } of records) {
    const [rowText = "", foldText = "", className] = fields.map((field) => field.text);
    const row = readWhole(rowText);
    if (row === undefined || row >= rowCount) {
      throw new TableFault(file, line, "row", `"${rowText}"`, `a row of the data, 0 to ${rowCount - 1}`);
    }
    const fold = readWhole(foldText);
    if (fold === undefined)
      throw new TableFault(file, line, "fold", `"${foldText}"`, "a whole number from 0");
    if (folds[row] !== -1) throw new TableFault(file, line, "row", `${row} again`, "every row once");
    const known = classOf(row);
    if (className !== undefined && known !== undefined && className !== known) {
      const mend = `"${known}" as in the data, or the folds of this very file`;
      throw new TableFault(file, line, "class", `"${className}"`, mend);
    }
    folds[row] = fold;
  }
  const missing = folds.indexOf(-1);
  if (missing >= 0)
    throw new TableFault(file, 0, "rows", `none for row ${missing}`, "a fold for every row of the data");
  if (new Set(folds).size < 2) throw new TableFault(file, 0, "folds", "fewer than two", "two or more");
  return folds;
}

function readWhole(text: string): number | undefined {
  return /^\d{1,9}$/.test(text) ? Number(text) : undefined;
}
