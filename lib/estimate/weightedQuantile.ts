import { effectiveSize } from "./effectiveSize";

/**
 * The weighted quantile of type 7.
 *
 * With n the effective size of the weights, h = p (n - 1) + 1 and t_i the cumulated shares of the sorted values, the quantile is
 * sum of x_i (F(t_i) - F(t_(i-1))), where F(u) = min(1, max(0, n u - h + 1)). Equal weights give Hyndman & Fan's type 7.
 * Weights are how like the cases are, not how often they happened: only their ratios matter.
 *
 * @param values finite, in any order and unit
 * @param weights as many, finite, 0 or more, at least one above 0
 * @param p in 0..1
 * @returns a value between the least and the greatest that carry weight
 * @throws RangeError when lengths differ, a number is out of range or nothing carries weight
 * @example weightedQuantile([1, 2, 4, 7], [1, 1, 1, 1], 0.5) // 3
 * Source: Hyndman & Fan 1996; Akinshin 2023, Weighted quantile estimators, section on the type 7 and Kish's effective size.
 */
export function weightedQuantile(values: readonly number[], weights: readonly number[], p: number): number {
  if (values.length !== weights.length)
    throw new RangeError(
      `every value must have a weight; got ${values.length} values, ${weights.length} weights; pair them up`,
    );
  if (!(p >= 0 && p <= 1)) throw new RangeError(`p must be in 0..1; got ${p}; give a probability`);
  const weighed = values
    .map((value, index) => ({ value, weight: weights[index] ?? 0 }))
    .filter(({ value, weight }) => {
      if (!(Number.isFinite(value) && Number.isFinite(weight) && weight >= 0))
        throw new RangeError(
          `a value must be finite and its weight 0 or more; got ${value} with ${weight}; leave it out`,
        );
      return weight > 0;
    })
    .sort((one, other) => one.value - other.value);
  const [first, last] = [weighed[0], weighed.at(-1)];
  if (!first || !last) throw new RangeError("some value must carry weight; got none; check for cases first");

  const size = effectiveSize(weighed.map(({ weight }) => weight));
  const h = p * (size - 1) + 1;
  const ramp = (share: number) => Math.min(1, Math.max(0, size * share - h + 1));
  const largest = weighed.reduce((most, { weight }) => Math.max(most, weight), 0);
  const total = weighed.reduce((sum, { weight }) => sum + weight / largest, 0);
  let [quantile, cumulated, before] = [0, 0, 0];
  for (const [index, { value, weight }] of weighed.entries()) {
    cumulated += weight / largest;
    // The last share is 1, whatever rounding made of the sum.
    const after = index === weighed.length - 1 ? 1 : ramp(cumulated / total);
    quantile += value * (after - before);
    before = after;
  }
  return Math.min(last.value, Math.max(first.value, quantile));
}
