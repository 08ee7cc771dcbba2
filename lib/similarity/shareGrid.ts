/** Similarities are ranked by, and handed out, at this many steps a unit: 12 decimals. */
const RANKING_STEPS = 1e12;

/**
 * Put a number in 0..1 on the grid of shares, the whole multiples of 2^-52; halfway goes to the even one.
 * Double-precision sums depend on their order; sums up to 2 of numbers on this grid do not, because they are exact.
 * So columns, blocks and posting lists may add up in whichever order is fastest and still tie exactly where they should.
 *
 * @param x 0..1; outside it the grid is another.
 * @returns the nearest multiple of 2^-52, at most 2^-53 away.
 */
export function toShareGrid(x: number): number {
  // Doubles in 1..2 are the multiples of 2^-52: adding 1 rounds to them, and taking it away again is exact.
  return x + 1 - 1;
}

/**
 * Round a similarity to the 12 decimals by which cases are ranked.
 * Two cases that are equally alike for different reasons differ in the last bits at most: those bits must not rank them.
 *
 * @param similarity 0..1.
 */
export function roundSimilarity(similarity: number): number {
  return Math.floor(similarity * RANKING_STEPS + 0.5) / RANKING_STEPS;
}
