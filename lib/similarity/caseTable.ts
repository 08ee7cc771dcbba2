import type { Attribute } from "./attribute";
import { checkAttributes } from "./checkAttributes";
import type { Column } from "./column";
import { makeColumn } from "./column";
import { encodeRow, type WriteCell } from "./encodeRow";
import { findPosting } from "./findPosting";
import { growTo } from "./growTo";
import type { Row } from "./row";

/**
 * Cases in columns. Rows are numbered from 0 in the order they came and keep their number;
 * a row removed leaves its number behind, unknown in every column. Written by the functions of this module only.
 */
export interface CaseTable {
  readonly attributes: readonly Attribute[];
  /** By the attribute's name, in the order of the schema. */
  readonly columns: ReadonlyMap<string, Column>;
  readonly ids: string[];
  readonly dates: string[];
  /** The live rows by id. */
  readonly rowOfId: Map<string, number>;
  /** 1 for a live row, 0 for one removed; may be longer than the table. */
  live: Uint8Array;
  /** Row numbers given out, removed rows included. */
  rowCount: number;
}

function makeRoom(table: CaseTable, rows: number): void {
  const bytes = (length: number) => new Uint8Array(length);
  const floats = (length: number) => new Float64Array(length);
  table.live = growTo(table.live, rows, bytes);
  for (const column of table.columns.values()) {
    if (column.kind === "coded") {
      column.codes =
        column.codes instanceof Uint8Array
          ? growTo(column.codes, rows, bytes)
          : growTo(column.codes, rows, (length) => new Uint16Array(length));
    } else if (column.kind === "numeric") {
      column.low = growTo(column.low, rows, floats, Number.NaN);
      column.high = growTo(column.high, rows, floats, Number.NaN);
    }
  }
}

function writeRow(table: CaseTable, { id, date }: Row, writes: readonly WriteCell[]): number {
  const row = table.rowCount;
  makeRoom(table, row + 1);
  for (const write of writes) write(row);
  table.ids.push(id);
  table.dates.push(date);
  table.rowOfId.set(id, row);
  table.live[row] = 1;
  table.rowCount += 1;
  return row;
}

/**
 * Whether a row number belongs to a row that has not been removed.
 *
 * @param row any whole number.
 */
export function isLive(table: CaseTable, row: number): boolean {
  return table.live[row] === 1;
}

/**
 * Add a row at the end, in time that does not depend on the size of the table.
 *
 * @returns the row's number.
 * @throws RangeError when the id is in the table, or a name or value is not in the schema; the table is then as before.
 */
export function appendRow(table: CaseTable, row: Row): number {
  if (table.rowOfId.has(row.id)) {
    throw new RangeError(
      `a case's id must be new; got "${row.id}" again; replace that case or rename this one`,
    );
  }
  return writeRow(table, row, encodeRow(table.columns, row));
}

/**
 * Take a row out. Its number is not given out again and its postings stay, marked unknown:
 * build the table anew once more rows have been removed than live.
 *
 * @returns the number that the row had.
 * @throws RangeError when no live row has the id.
 */
export function removeRow(table: CaseTable, id: string): number {
  const row = table.rowOfId.get(id);
  if (row === undefined) {
    throw new RangeError(`a case to remove must be in the table; got "${id}"; look its id up again`);
  }
  for (const column of table.columns.values()) {
    if (column.kind === "coded") {
      const code = column.codes[row] ?? 0;
      if (code !== 0) column.counts[code] = (column.counts[code] ?? 0) - 1;
      column.codes[row] = 0;
    } else if (column.kind === "numeric") {
      if (!Number.isNaN(column.low[row])) column.knownCount -= 1;
      column.low[row] = Number.NaN;
      column.high[row] = Number.NaN;
    } else if (column.kind === "findings") {
      for (const list of column.postings.values()) {
        const at = findPosting(list, row);
        const outcome = at < 0 ? 0 : (list.outcomes[at] ?? 0);
        if (outcome === 0) continue;
        list.counts[outcome] = (list.counts[outcome] ?? 0) - 1;
        list.outcomes[at] = 0;
      }
    }
  }
  table.live[row] = 0;
  table.rowOfId.delete(id);
  return row;
}

/**
 * Put a row in the place of the one with the same id.
 *
 * @returns the new row's number; the old one's is gone.
 * @throws RangeError when no live row has the id, or the row is bad; the table is then as before.
 */
export function replaceRow(table: CaseTable, row: Row): number {
  const writes = encodeRow(table.columns, row);
  removeRow(table, row.id);
  return writeRow(table, row, writes);
}

/**
 * Put cases into a table of typed columns for `retrieve`.
 *
 * @param attributes the schema: at most 65,535 values an attribute and 255 outcomes a finding key.
 * @param rows in any order, ids distinct; they are copied, not kept.
 * @throws RangeError when the schema or a row is bad; the message names the case.
 */
export function buildCaseTable(attributes: readonly Attribute[], rows: readonly Row[]): CaseTable {
  checkAttributes(attributes);
  const table: CaseTable = {
    attributes,
    columns: new Map(attributes.map((attribute) => [attribute.name, makeColumn(attribute, rows.length)])),
    ids: [],
    dates: [],
    rowOfId: new Map(),
    live: new Uint8Array(rows.length),
    rowCount: 0,
  };
  for (const row of rows) appendRow(table, row);
  return table;
}
