import type { CaseTable } from "./caseTable";
import { type CompiledQuery, compileQuery } from "./compileQuery";
import type { Query } from "./row";
import { scoreRows } from "./scoreRows";
import { roundSimilarity } from "./shareGrid";
import { TopHeap } from "./topHeap";

/** More than rounding to 12 decimals can add to a sum. */
const ROUNDING_ROOM = 1e-12;

/** A case found; `row` is its number in the table, `similarity` 0..1, rounded to 12 decimals. */
export interface RetrievedCase {
  readonly row: number;
  readonly id: string;
  readonly similarity: number;
}

/** Which cases, and how many. */
export interface RetrieveOptions {
  /** How many at most: whole, 0 or more. */
  readonly k: number;
  /** Whether a row may be found; must depend on the row alone, for it is asked only about rows that would be in. */
  readonly include?: (row: number) => boolean;
  /** A row to leave out, such as the query's own case; it still counts in the expected similarities. */
  readonly exclude?: number;
  /** The query compiled against the table as it stands, where that was done already. */
  readonly compiled?: CompiledQuery;
}

/** Higher similarity first, then the newer date, then the smaller id, both as text. */
function rankBy(table: CaseTable, similarities: Float64Array): (a: number, b: number) => boolean {
  return (a, b) => {
    const difference = (similarities[a] ?? 0) - (similarities[b] ?? 0);
    if (difference !== 0) return difference > 0;
    const dateA = table.dates[a] ?? "";
    const dateB = table.dates[b] ?? "";
    if (dateA !== dateB) return dateA > dateB;
    return (table.ids[a] ?? "") < (table.ids[b] ?? "");
  };
}

/**
 * The k cases most like the query: S(q, c) = sum of w s / sum of w over the attributes and finding keys that the query knows.
 * Exact: every case is scored. A query that knows nothing (or only attributes of weight 0) finds every case at similarity 0, so the newest.
 *
 * @param query in the words of the table's schema; see `compileQuery` for what unknown means.
 * @returns at most k, best first; ties by date (newer first), then id (ascending).
 * @throws RangeError when the query is not in the schema's words, or k is not a whole number of 0 or more.
 * Source: Aamodt & Plaza 1994 (retrieve); Richter & Weber 2013, chapter 6 (weighted mean of local similarities).
 */
export function retrieve(table: CaseTable, query: Query, options: RetrieveOptions): RetrievedCase[] {
  const { k, include, exclude, compiled } = options;
  if (!Number.isInteger(k) || k < 0) {
    throw new RangeError(`k must be a whole number of 0 or more; got ${k}; ask for some cases`);
  }
  const sums = scoreRows(table, compiled ?? compileQuery(table, query));
  if (k === 0) return [];
  const heap = new TopHeap(k, rankBy(table, sums));
  let bar = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < sums.length; row += 1) {
    const sum = sums[row] ?? 0;
    if (sum < bar || row === exclude || table.live[row] !== 1) continue;
    sums[row] = roundSimilarity(sum);
    if (heap.last !== undefined && !heap.comesBefore(row, heap.last)) continue;
    if (include !== undefined && !include(row)) continue;
    heap.offer(row);
    if (heap.last !== undefined) bar = (sums[heap.last] ?? 0) - ROUNDING_ROOM;
  }
  return heap.sorted().map((row) => ({ row, id: table.ids[row] ?? "", similarity: sums[row] ?? 0 }));
}

/**
 * The similarity of every row to the query, for voting.
 *
 * @returns by row number, 0..1, rounded to 12 decimals like `retrieve`'s; 0 for rows removed (`isLive` tells them).
 * @throws RangeError as `compileQuery` does.
 */
export function similarities(table: CaseTable, query: Query): Float64Array {
  const sums = scoreRows(table, compileQuery(table, query));
  for (let row = 0; row < sums.length; row += 1) {
    sums[row] = table.live[row] === 1 ? roundSimilarity(sums[row] ?? 0) : 0;
  }
  return sums;
}
