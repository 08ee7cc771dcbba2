import type { TableColumn } from "./tables/table";

/** What may be learned from: columns by row, the class code of every row, and how many classes there are. */
export type LabelledTable = Readonly<{
  columns: readonly TableColumn[];
  labels: Int32Array;
  classCount: number;
}>;

/** Probability of every class for a row of the table, adding up to 1; the row's own label is not looked at. */
export type Answer = (row: number) => Float64Array;

/**
 * A way to tell classes. Learning has two steps, so that leaving one row out need not repeat the long one: `learn` settles
 * what takes time (weights, bandwidths) on some rows, and what it returns counts quickly over rows that may be more or
 * fewer than those.
 */
export type Engine = Readonly<{
  learn: (data: LabelledTable, rows: Int32Array) => (rows: Int32Array) => Answer;
  /** About how many cells the second step looks at, so that it is known how often it can be repeated. */
  visitsToRecount: (rowCount: number, columnCount: number) => number;
}>;
