import type { Attribute } from "./attribute";
import { buildCaseTable, type CaseTable } from "./caseTable";
import type { Column, PostingList } from "./column";

/** The numbers of a table, column by column in the order of the schema; its ids and dates stand beside them. */
export type ColumnArray = Uint8Array | Uint16Array | Int32Array | Float64Array;

/** A table laid out to be kept: `columns` holds codes; bounds; or lengths, rows and outcomes of all posting lists of a column. */
export type LaidTable = Readonly<{
  ids: readonly string[];
  dates: readonly string[];
  columns: readonly ColumnArray[];
}>;

/**
 * Lays a table out in few long arrays.
 *
 * @throws RangeError when rows have been removed from it: build it anew first
 */
export function layTable(table: CaseTable): LaidTable {
  const { ids, dates, rowCount, rowOfId } = table;
  if (rowOfId.size !== rowCount) {
    throw new RangeError(
      `a table to be kept must have no removed rows; got ${rowCount - rowOfId.size}; build it anew`,
    );
  }
  const columns = [...table.columns.values()].flatMap((column) => layColumn(column, rowCount));
  return { ids, dates, columns };
}

function layColumn(column: Column, rowCount: number): ColumnArray[] {
  switch (column.kind) {
    case "coded":
      return [column.codes.slice(0, rowCount)];
    case "numeric":
      return [column.low.slice(0, rowCount), column.high.slice(0, rowCount)];
    case "findings":
      return layPostings([...column.postings.values()]);
    case "text":
      return [];
  }
}

function layPostings(lists: readonly PostingList[]): ColumnArray[] {
  const lengths = Int32Array.from(lists, ({ length }) => length);
  const all = lengths.reduce((sum, length) => sum + length, 0);
  const rows = new Int32Array(all);
  const outcomes = new Uint8Array(all);
  let at = 0;
  for (const list of lists) {
    rows.set(list.rows.subarray(0, list.length), at);
    outcomes.set(list.outcomes.subarray(0, list.length), at);
    at += list.length;
  }
  return [lengths, rows, outcomes];
}

/**
 * Makes a table of what `layTable` laid out.
 *
 * @param attributes the schema by which it was laid out; that it is the same is for the caller to see to
 * @throws RangeError when there are other arrays than the schema has
 */
export function takeUpTable(attributes: readonly Attribute[], { ids, dates, columns }: LaidTable): CaseTable {
  const table = buildCaseTable(attributes, []);
  const rest = [...columns];
  for (const column of table.columns.values()) fillColumn(column, rest, ids.length);
  for (const [row, id] of ids.entries()) {
    table.ids.push(id);
    table.dates.push(dates[row] ?? "");
    table.rowOfId.set(id, row);
  }
  table.live = new Uint8Array(ids.length).fill(1);
  table.rowCount = ids.length;
  return table;
}

function fillColumn(column: Column, rest: ColumnArray[], rowCount: number): void {
  if (column.kind === "coded") {
    const isWide = column.codes instanceof Uint16Array;
    column.codes = isWide ? take(rest, Uint16Array, rowCount) : take(rest, Uint8Array, rowCount);
    for (const code of column.codes) if (code !== 0) column.counts[code] = (column.counts[code] ?? 0) + 1;
  } else if (column.kind === "numeric") {
    column.low = take(rest, Float64Array, rowCount);
    column.high = take(rest, Float64Array, rowCount);
    for (const [row, low] of column.low.entries()) {
      if (Number.isNaN(low)) continue;
      column.knownCount += 1;
      if (!Number.isFinite(low) || !Number.isFinite(column.high[row])) column.hasOpen = true;
    }
  } else if (column.kind === "findings") fillPostings([...column.postings.values()], rest);
}

function fillPostings(lists: readonly PostingList[], rest: ColumnArray[]): void {
  const lengths = take(rest, Int32Array, lists.length);
  const all = lengths.reduce((sum, length) => sum + length, 0);
  const rows = take(rest, Int32Array, all);
  const outcomes = take(rest, Uint8Array, all);
  let at = 0;
  for (const [number, list] of lists.entries()) {
    list.length = lengths[number] ?? 0;
    list.rows = rows.subarray(at, at + list.length);
    list.outcomes = outcomes.subarray(at, at + list.length);
    for (const outcome of list.outcomes) list.counts[outcome] = (list.counts[outcome] ?? 0) + 1;
    at += list.length;
  }
}

function take<Kind extends ColumnArray>(
  rest: ColumnArray[],
  kind: new (length: number) => Kind,
  length: number,
): Kind {
  const array = rest.shift();
  if (array instanceof kind && array.length === length) return array;
  throw new RangeError(
    `a column must be ${length} numbers of ${kind.name}; got ${array?.length} of ${array?.constructor.name}; build the table anew`,
  );
}
