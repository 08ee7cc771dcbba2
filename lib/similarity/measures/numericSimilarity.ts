/** All numbers from `low` to `high`, both in the attribute's unit; a bound that nobody knows is infinite. */
export interface NumberInterval {
  readonly low: number;
  readonly high: number;
}

/**
 * Similarity of two intervals: max(0, 1 - gap / tolerance), where the gap is 0 if they overlap.
 * A single number is an interval whose bounds are equal, so that two numbers give max(0, 1 - |a - b| / tolerance).
 *
 * @param lowA lower bound of the first, in the attribute's unit; may be -Infinity.
 * @param highA upper bound of the first, not under lowA; may be Infinity.
 * @param lowB lower bound of the second.
 * @param highB upper bound of the second.
 * @param tolerance distance at which nothing is left, in the same unit; over 0.
 * @returns 0..1; symmetric; `numericSimilarity(1, 1, 2, 3, 4)` is 0.75. NaN bounds give NaN.
 * Source: Gower 1971 (quantitative characters), with the range replaced by the tolerance.
 */
export function numericSimilarity(
  lowA: number,
  highA: number,
  lowB: number,
  highB: number,
  tolerance: number,
): number {
  const gap = Math.max(0, lowA - highB, lowB - highA);
  return Math.max(0, 1 - gap / tolerance);
}
