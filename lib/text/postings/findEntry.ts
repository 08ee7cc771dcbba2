import type { TermPostings } from "./wordPostings";

/**
 * Finds a key among a term's entries by halving.
 *
 * @returns the place of the first key that is `key` or more, from 0; `length` where all are less
 */
export function findEntry({ entries, length }: TermPostings, key: number): number {
  let low = 0;
  let high = length;
  // New texts have the highest number: their place is the end.
  if (length > 0 && (entries[2 * length - 2] ?? 0) < key) return length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((entries[2 * middle] ?? 0) < key) low = middle + 1;
    else high = middle;
  }
  return low;
}
