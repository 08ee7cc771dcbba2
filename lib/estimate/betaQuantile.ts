import { regularizedBeta } from "./regularizedBeta";

/**
 * The share under which a beta-distributed one lies with the given probability: the x with I_x(a, b) = probability.
 *
 * By bisection down to neighbouring numbers: slow against Newton's method, but it cannot go astray.
 *
 * @param probability in 0..1
 * @param a above 0
 * @param b above 0
 * @returns in 0..1, rising in the probability
 * @throws RangeError when an argument is out of range
 * @example betaQuantile(0.5, 2, 2) // 0.5
 * Source: the definition; see `regularizedBeta`.
 */
export function betaQuantile(probability: number, a: number, b: number): number {
  if (!(probability >= 0 && probability <= 1))
    throw new RangeError(`a probability must be in 0..1; got ${probability}; give a share, not percent`);
  if (probability === 0 || probability === 1) return probability;
  let [low, high] = [0, 1];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (regularizedBeta(middle, a, b) < probability) low = middle;
    else high = middle;
  }
}
