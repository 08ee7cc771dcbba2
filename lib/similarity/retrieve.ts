import type { CaseTable } from "./caseTable";
import { type CompiledQuery, compileQuery } from "./compileQuery";
import type { Query } from "./row";
import { scoreBlocks } from "./scoreBlocks";
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

/** A row with its similarity, rounded. */
interface ScoredRow {
  readonly row: number;
  readonly similarity: number;
}

/** Higher similarity first, then the newer date, then the smaller id, both as text. */
function rankBy({ dates, ids }: CaseTable): (a: ScoredRow, b: ScoredRow) => boolean {
  return (a, b) => {
    if (a.similarity !== b.similarity) return a.similarity > b.similarity;
    const dateA = dates[a.row] ?? "";
    const dateB = dates[b.row] ?? "";
    if (dateA !== dateB) return dateA > dateB;
    return (ids[a.row] ?? "") < (ids[b.row] ?? "");
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
  const asked = compiled ?? compileQuery(table, query);
  if (k === 0) return [];
  const heap = new TopHeap(k, rankBy(table));
  let bar = Number.NEGATIVE_INFINITY;
  for (const { from, sums } of scoreBlocks(table, asked)) {
    for (let at = 0; at < sums.length; at += 1) {
      const sum = sums[at] ?? 0;
      if (sum < bar) continue;
      const row = from + at;
      if (row === exclude || table.live[row] !== 1) continue;
      const scored = { row, similarity: roundSimilarity(sum) };
      if (heap.last !== undefined && !heap.comesBefore(scored, heap.last)) continue;
      if (include !== undefined && !include(row)) continue;
      heap.offer(scored);
      if (heap.last !== undefined) bar = heap.last.similarity - ROUNDING_ROOM;
    }
  }
  return heap.sorted().map(({ row, similarity }) => ({ row, id: table.ids[row] ?? "", similarity }));
}

/**
 * The similarity of every row to the query, for voting.
 *
 * @returns by row number, 0..1, rounded to 12 decimals like `retrieve`'s; 0 for rows removed (`isLive` tells them).
 * @throws RangeError as `compileQuery` does.
 */
export function similarities(table: CaseTable, query: Query): Float64Array {
  const all = new Float64Array(table.rowCount);
  for (const { from, sums } of scoreBlocks(table, compileQuery(table, query))) {
    for (let at = 0; at < sums.length; at += 1) {
      const row = from + at;
      all[row] = table.live[row] === 1 ? roundSimilarity(sums[at] ?? 0) : 0;
    }
  }
  return all;
}
