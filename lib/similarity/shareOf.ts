import { toShareGrid } from "./shareGrid";

/**
 * What one term gives to the global similarity: w s / sum of w, on the grid of shares; 0 where all weights are 0.
 *
 * @param weight of the term, 0 or more.
 * @param similarity 0..1.
 * @param totalWeight sum over the terms that the query knows.
 * @returns 0..1; the shares of all terms add up to the similarity exactly.
 */
export function shareOf(weight: number, similarity: number, totalWeight: number): number {
  return totalWeight === 0 ? 0 : toShareGrid((weight * similarity) / totalWeight);
}
