/**
 * How many equally weighted cases weighted ones are worth.
 *
 *   n = (sum of w)^2 / sum of w^2
 *
 * @param weights finite, 0 or more; their scale does not matter
 * @returns from 1 to the number of weights above 0; 0 when there are none
 * @example effectiveSize([1, 1, 1, 1]) // 4
 * Source: Kish 1965, Survey Sampling.
 */
export function effectiveSize(weights: readonly number[]): number {
  // Against the largest first, so that tiny weights do not vanish when squared.
  const largest = weights.reduce((most, weight) => Math.max(most, weight), 0);
  if (largest === 0) return 0;
  let [sum, squares] = [0, 0];
  for (const weight of weights) {
    const share = weight / largest;
    sum += share;
    squares += share * share;
  }
  return (sum * sum) / squares;
}
