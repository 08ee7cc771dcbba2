import type { TableColumn } from "./table";

/** Gathers a column's cells one after the other. */
export type ColumnBuilder = Readonly<{
  /** Takes a cell, undefined for unknown; says what would have been right where it is wrong, and then takes nothing. */
  add: (cell: string | undefined) => string | undefined;
  build: () => TableColumn;
}>;
