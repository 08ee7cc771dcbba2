/** How often the right answer came first, among the first two and three, and the mean reciprocal rank. */
export type RankSummary = Readonly<{ n: number; hit1: number; hit2: number; hit3: number; mrr: number }>;

/**
 * Sums up at which ranks the right answers came.
 *
 * @param ranks 1 for first; Infinity where it did not come at all
 * @returns shares 0..1; all 0 for no ranks
 * @example summariseRanks([1, 3]) // { n: 2, hit1: 0.5, hit2: 0.5, hit3: 1, mrr: 0.6667 }
 * Source: Voorhees 1999 (mean reciprocal rank).
 */
export function summariseRanks(ranks: readonly number[]): RankSummary {
  const share = (most: number) => rounded(ranks.filter((rank) => rank <= most).length / (ranks.length || 1));
  const reciprocal = ranks.reduce((sum, rank) => sum + 1 / rank, 0);
  return {
    n: ranks.length,
    hit1: share(1),
    hit2: share(2),
    hit3: share(3),
    mrr: rounded(reciprocal / (ranks.length || 1)),
  };
}

const rounded = (value: number) => Number(value.toFixed(4));
