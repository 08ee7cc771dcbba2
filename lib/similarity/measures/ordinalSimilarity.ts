/**
 * Similarity of two places on a scale: 1 - |rankA - rankB| / (rankCount - 1).
 *
 * @param rankA whole number in 0..rankCount - 1.
 * @param rankB the same.
 * @param rankCount number of places on the scale, 1 or more; a scale of one place always gives 1.
 * @returns 0..1; symmetric; `ordinalSimilarity(0, 1, 3)` is 0.5.
 * @throws RangeError when a rank is not on the scale.
 * Source: Gower 1971; ranks as numbers, Kaufman & Rousseeuw 1990, chapter 1.
 */
export function ordinalSimilarity(rankA: number, rankB: number, rankCount: number): number {
  for (const rank of [rankA, rankB]) {
    if (!Number.isInteger(rank) || rank < 0 || rank >= rankCount) {
      throw new RangeError(
        `a rank must be a whole number in 0..${rankCount - 1}; got ${rank}; look it up again`,
      );
    }
  }
  return rankCount === 1 ? 1 : 1 - Math.abs(rankA - rankB) / (rankCount - 1);
}
