/**
 * The conformal level of past scores: a new score, drawn like the past ones, lies at or under it with chance p or more.
 *
 *   the k-th smallest of n scores, k = ceil(p (n + 1)); the greatest where k is beyond n
 *
 * @param scores finite, in any order, at least one
 * @param p in 0..1
 * @returns one of the scores
 * @throws RangeError when there is no score or p is out of range
 * @example conformalLevel([1, 2, 3, 4], 0.8) // 4
 * Source: Vovk, Gammerman & Shafer 2005, Algorithmic Learning in a Random World, section 2.2; Lei, G'Sell, Rinaldo,
 * Tibshirani & Wasserman 2018, section 2.
 */
export function conformalLevel(scores: readonly number[], p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`p must be in 0..1; got ${p}; give a probability`);
  const sorted = [...scores].sort((a, b) => a - b);
  const rank = Math.ceil(Number((p * (sorted.length + 1)).toFixed(9)));
  const level = sorted[Math.min(sorted.length, Math.max(1, rank)) - 1];
  if (level === undefined)
    throw new RangeError("there must be a past score; got none; ask only when there are");
  return level;
}
