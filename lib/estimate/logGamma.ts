/** Lanczos' coefficients for g = 7, nine terms. Source: Godfrey 2001, A note on the computation of the convergent Lanczos formula. */
const g = 7;
const leading = 0.99999999999980993;
const coefficients = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * The natural logarithm of the gamma function.
 *
 * @param x above 0
 * @returns ln gamma(x), good to about 15 digits of gamma for small x
 * @throws RangeError when x is not above 0
 * @example logGamma(5) // ln 24
 * Source: Lanczos 1964.
 */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new RangeError(`x must be above 0; got ${x}; use the reflection formula elsewhere`);
  const z = x - 1;
  const series = coefficients.reduce((sum, term, index) => sum + term / (z + index + 1), leading);
  const t = z + g + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(series);
}
