import type { ColumnBuilder } from "./columnBuilder";

/**
 * Builds a numeric column.
 *
 * @param read a cell's number, undefined where it is none
 * @param expected what to write in a cell, for messages
 */
export function numericBuilder(
  name: string,
  read: (cell: string) => number | undefined,
  expected: string,
): ColumnBuilder {
  const numbers: number[] = [];
  return {
    add: (cell) => {
      const number = cell === undefined ? Number.NaN : read(cell);
      if (number === undefined) return expected;
      numbers.push(number);
      return undefined;
    },
    build: () => ({ kind: "numeric", name, numbers: Float64Array.from(numbers) }),
  };
}
