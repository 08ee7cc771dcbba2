import type { CompiledProblem } from "./compileProblem";

/** More splittings than this are not worth a bound. Chosen: about 10 ms. */
const mostSplits = 2_000_000;

/**
 * Bounds a plan's expected minutes from below, as if every way of parting the states could be bought for the cheapest check's minutes.
 *
 *   T(S) = min( best repair over S, cheapest check x p(S) + least sum of T over partings of S into at most k parts )
 *
 * with k the most outcomes of any check, everything weighted by the prior and not scaled. Where each state must be told apart this
 * is the Huffman code's length. It holds for checks that err, too: an erring check is a toss between checks that do not.
 *
 * @returns T for every set of states, by its bits, in minutes; undefined where there are too many states for it
 * Source: Huffman 1952; Pattipati & Alexandridis 1990 for the bound; states that share a repair need no parting.
 */
export function freeTestsBound({ prior, checks, actMinutes }: CompiledProblem): Float64Array | undefined {
  const states = prior.length;
  const parts = checks.reduce((most, { likelihoods }) => Math.max(most, likelihoods.length), 1);
  if (3 ** states * parts > mostSplits) return undefined;
  const cheapest = checks.reduce((least, { minutes }) => Math.min(least, minutes), Number.POSITIVE_INFINITY);
  const sets = 2 ** states;
  const chance = new Float64Array(sets);
  for (let set = 1; set < sets; set++) {
    const state = 31 - Math.clz32(set);
    chance[set] = (chance[set & ~(1 << state)] ?? 0) + (prior[state] ?? 0);
  }
  const acting = actBySet(prior, actMinutes, sets);
  // least[k - 1][S]: the cheapest way to have S in at most k parts.
  const least = Array.from({ length: parts }, () => new Float64Array(sets));
  const whole = least[0] ?? new Float64Array(sets);
  for (let set = 1; set < sets; set++) {
    const top = 1 << (31 - Math.clz32(set));
    const rest = set & ~top;
    const parted = least.map((_, k) => {
      if (k === 0) return Number.POSITIVE_INFINITY;
      const others = least[k - 1] ?? whole;
      let best = Number.POSITIVE_INFINITY;
      // The part with the set's last state takes any of the rest but not all of it.
      for (let taken = rest; taken > 0; ) {
        taken = (taken - 1) & rest;
        best = Math.min(best, (whole[taken | top] ?? 0) + (others[rest & ~taken] ?? 0));
      }
      return best;
    });
    const bought = cheapest * (chance[set] ?? 0) + (parted.at(-1) ?? Number.POSITIVE_INFINITY);
    const value = chance[set] ? Math.min(acting[set] ?? 0, bought) : 0;
    for (const [k, values] of least.entries()) values[set] = Math.min(value, parted[k] ?? value);
  }
  return whole;
}

/** Minutes of the best single repair for each set of states, weighted by the prior. */
function actBySet(prior: Float64Array, repairs: readonly Float64Array[], sets: number): Float64Array {
  const best = new Float64Array(sets).fill(Number.POSITIVE_INFINITY);
  for (const minutes of repairs) {
    const sums = new Float64Array(sets);
    for (let set = 1; set < sets; set++) {
      const state = 31 - Math.clz32(set);
      const p = prior[state] ?? 0;
      const sum = (sums[set & ~(1 << state)] ?? 0) + (p > 0 ? p * (minutes[state] ?? 0) : 0);
      sums[set] = sum;
      if (sum < (best[set] ?? 0)) best[set] = sum;
    }
  }
  return best;
}
