/** A column of words: codes by row, -1 where unknown, c for `values[c]`. */
export type NominalColumn = Readonly<{
  kind: "nominal";
  name: string;
  values: readonly string[];
  codes: Int32Array;
}>;

/** A column of numbers by row, all finite, NaN where unknown. */
export type NumericColumn = Readonly<{ kind: "numeric"; name: string; numbers: Float64Array }>;

export type TableColumn = NominalColumn | NumericColumn;

/** A data matrix as read from a file, before anybody says which column is the class. */
export type Table = Readonly<{
  /** As messages name it. */
  file: string;
  columns: readonly TableColumn[];
  rowCount: number;
  /** What was passed over, one remark a line. */
  notes: readonly string[];
}>;
