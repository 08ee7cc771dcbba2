/** The least that any outcome is given: no single finding may rule a cause out for good. */
const least = 0.01;

/**
 * Fills up a distribution of which some outcomes are told: what is left goes to the others in proportion to `background`.
 *
 * @param told probability of some outcomes, each 0..1; where they add up to more than 1 they are scaled down
 * @param background probability of every outcome when nothing is told; adds up to 1
 * @returns probabilities in the order of `outcomes`, each over 0, adding up to 1
 * @example spreadOutcomes(["a", "b"], new Map([["a", 0.8]]), [0.5, 0.5]) // [0.8, 0.2]
 */
export function spreadOutcomes(
  outcomes: readonly string[],
  told: ReadonlyMap<string, number>,
  background: readonly number[],
): number[] {
  const given = outcomes.reduce((sum, outcome) => sum + (told.get(outcome) ?? 0), 0);
  const untold = outcomes.reduce(
    (sum, outcome, at) => sum + (told.has(outcome) ? 0 : (background[at] ?? 0)),
    0,
  );
  const left = Math.max(0, 1 - given);
  const raw = outcomes.map((outcome, at) => {
    const own = told.get(outcome);
    if (own !== undefined) return Math.max(least, own);
    return Math.max(least, untold > 0 ? (left * (background[at] ?? 0)) / untold : 0);
  });
  const total = raw.reduce((sum, value) => sum + value, 0);
  return raw.map((value) => value / total);
}
