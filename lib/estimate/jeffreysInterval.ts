import { betaQuantile } from "./betaQuantile";

/**
 * An interval for a rate of which k in n were seen.
 *
 *   the middle `level` of Beta(k + 1/2, n - k + 1/2); the low end is 0 when k = 0, the high end 1 when k = n
 *
 * @param k how often it happened, 0..n; fractions are allowed, for cases that count in part
 * @param n out of how many, 0 or more and finite
 * @param level in 0..1, both ends excluded; default 0.95
 * @returns low <= k/n <= high in 0..1; 0 to 1 when n is 0
 * @throws RangeError when an argument is out of range
 * @example jeffreysInterval(3, 10) // { low: 0.0927, high: 0.6058 }, rounded
 * Source: Brown, Cai & DasGupta 2001, Interval estimation for a binomial proportion, section 4.
 */
export function jeffreysInterval(
  k: number,
  n: number,
  level = 0.95,
): Readonly<{ low: number; high: number }> {
  if (!(k >= 0 && k <= n && Number.isFinite(n) && level > 0 && level < 1))
    throw new RangeError(
      `k must be in 0..n and level between 0 and 1; got ${k} of ${n} at ${level}; recount`,
    );
  const tail = (1 - level) / 2;
  const [a, b] = [k + 0.5, n - k + 0.5];
  return { low: k === 0 ? 0 : betaQuantile(tail, a, b), high: k === n ? 1 : betaQuantile(1 - tail, a, b) };
}
