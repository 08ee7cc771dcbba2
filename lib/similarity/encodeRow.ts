import type { CodedColumn, Column, NumericColumn, PostingList } from "./column";
import { checkNames, encodeInterval, encodeOutcome, encodeValue, readOwn } from "./encodeValue";
import { growTo } from "./growTo";
import type { Row } from "./row";

/** Writes one cell; made before anything is written, so that a bad row leaves the table as it was. */
export type WriteCell = (row: number) => void;

function writeCode(column: CodedColumn, code: number): WriteCell {
  return (row) => {
    column.codes[row] = code;
    column.counts[code] = (column.counts[code] ?? 0) + 1;
  };
}

function writeInterval(column: NumericColumn, low: number, high: number): WriteCell {
  return (row) => {
    column.low[row] = low;
    column.high[row] = high;
    column.knownCount += 1;
    if (!Number.isFinite(low) || !Number.isFinite(high)) column.hasOpen = true;
  };
}

function writePosting(list: PostingList, outcome: number): WriteCell {
  return (row) => {
    list.rows = growTo(list.rows, list.length + 1, (length) => new Int32Array(length));
    list.outcomes = growTo(list.outcomes, list.length + 1, (length) => new Uint8Array(length));
    list.rows[list.length] = row;
    list.outcomes[list.length] = outcome;
    list.counts[outcome] = (list.counts[outcome] ?? 0) + 1;
    list.length += 1;
  };
}

function encodeCells(columns: ReadonlyMap<string, Column>, row: Row): WriteCell[] {
  checkNames(columns, row.values, row.findings);
  const writes: WriteCell[] = [];
  for (const [name, column] of columns) {
    if (column.kind === "findings") {
      for (const [key, outcome] of Object.entries(readOwn(row.findings, name) ?? {})) {
        const list = column.postings.get(key);
        if (list === undefined || outcome === undefined) continue;
        writes.push(writePosting(list, encodeOutcome(list, outcome)));
      }
      continue;
    }
    const value = readOwn(row.values, name);
    if (value === undefined) continue;
    if (column.kind === "coded") writes.push(writeCode(column, encodeValue(column, value)));
    if (column.kind === "numeric") {
      const { low, high } = encodeInterval(name, value);
      writes.push(writeInterval(column, low, high));
    }
  }
  return writes;
}

/**
 * Turn a row into the writes that put it into its columns.
 *
 * @throws RangeError that names the case, when a name or value is not in the schema; nothing has been written then.
 */
export function encodeRow(columns: ReadonlyMap<string, Column>, row: Row): WriteCell[] {
  try {
    return encodeCells(columns, row);
  } catch (error) {
    if (error instanceof RangeError) throw new RangeError(`case "${row.id}": ${error.message}`);
    throw error;
  }
}
