import type { PostingList } from "./column";

/**
 * Where a row stands in a posting list, by halving.
 *
 * @returns its place, or -1 when the row does not know the key.
 */
export function findPosting(list: PostingList, row: number): number {
  let from = 0;
  let to = list.length - 1;
  while (from <= to) {
    const middle = (from + to) >> 1;
    const found = list.rows[middle] ?? -1;
    if (found === row) return middle;
    if (found < row) from = middle + 1;
    else to = middle - 1;
  }
  return -1;
}
