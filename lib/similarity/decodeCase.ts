import type { Column, PostingList } from "./column";
import { findPosting } from "./findPosting";
import type { AttributeValue } from "./row";

/**
 * What a row knows in a column that holds values.
 *
 * @returns the value as it was given, an interval of one number as that number; undefined where unknown.
 */
export function decodeValue(column: Column, row: number): AttributeValue | undefined {
  if (column.kind === "coded") return column.values[(column.codes[row] ?? 0) - 1];
  if (column.kind !== "numeric") return undefined;
  const low = column.low[row] ?? Number.NaN;
  const high = column.high[row] ?? Number.NaN;
  if (Number.isNaN(low)) return undefined;
  return low === high ? low : { low, high };
}

/**
 * The code of the outcome that a row knows of a finding key.
 *
 * @returns from 1; 0 where unknown.
 */
export function findOutcomeCode(list: PostingList, row: number): number {
  const at = findPosting(list, row);
  return at < 0 ? 0 : (list.outcomes[at] ?? 0);
}
