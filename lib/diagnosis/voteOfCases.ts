/** A retrieved case's say: how alike it is (0..1) and its causes with their share of the blame. */
export type Vote = Readonly<{
  similarity: number;
  causes: readonly Readonly<{ id: string; share: number }>[];
}>;

/** Similarity that has to be lost for a case's say to fall to 1/e of the best one's. Chosen: see `evaluate --casebook`. */
const bandwidth = 0.05;
/** Say of the prior, in votes of the best case: a lone neighbour does not decide. */
const priorVotes = 0.5;

/**
 * Lets like cases vote: a case's say is exp((s - s_best) / h), divided among its causes; the prior has a say too.
 *
 * @param prior probability of each cause before the vote, by the order of `causes`
 * @returns probabilities in that order, adding up to the prior's sum
 * Source: distance-weighted nearest neighbours, Dudani 1976.
 */
export function voteOfCases(
  causes: readonly string[],
  prior: Float64Array,
  votes: readonly Vote[],
): Float64Array {
  const best = votes.reduce((most, { similarity }) => Math.max(most, similarity), 0);
  const at = new Map(causes.map((id, row) => [id, row]));
  const mass = prior.reduce((sum, value) => sum + value, 0);
  const tally = prior.map((value) => (mass > 0 ? (priorVotes * value) / mass : 0));
  for (const { similarity, causes: blamed } of votes) {
    const say = Math.exp((similarity - best) / bandwidth);
    for (const { id, share } of blamed) {
      const row = at.get(id);
      if (row !== undefined && (prior[row] ?? 0) > 0) tally[row] = (tally[row] ?? 0) + say * share;
    }
  }
  const sum = tally.reduce((total, value) => total + value, 0);
  return sum > 0 ? tally.map((value) => (value / sum) * mass) : tally;
}
