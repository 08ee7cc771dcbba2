/** Under this share of n^3 the angles are one angle but for rounding: 5 degrees apart, 360 readings come to 3e-12. */
const leastSpread = 1e-13;

/** A mean and one harmonic, fitted: value = mean + cosine cos kt + sine sin kt. */
export type HarmonicFit = Readonly<{
  mean: number;
  cosine: number;
  sine: number;
  /** Measured minus fitted, in the order of the samples. */
  residuals: readonly number[];
  /**
   * Variance of the mean, variances and covariance of the two coefficients, from the residuals with n - 3 degrees of freedom;
   * undefined with three samples, where nothing is left over to tell the noise by.
   */
  variances?: Readonly<{ mean: number; cosine: number; sine: number; cosineSine: number }>;
}>;

/**
 * Fits a mean and the harmonic of one order to values taken around a turn, by ordinary least squares.
 *
 * @param samples angle in degrees and value in any unit; at least three angles that the harmonic can tell apart
 * @param order 1 for an offset centre, 2 for an oval
 * @returns the coefficients in the samples' unit
 * @throws RangeError when the angles do not determine the three coefficients
 * Source: normal equations of linear least squares, any textbook of numerical analysis.
 */
export function fitHarmonic(
  samples: readonly Readonly<{ angleDeg: number; value: number }>[],
  order: number,
): HarmonicFit {
  const n = samples.length;
  // Fitted about the plain mean, so that micrometres are not lost beside 17 mm.
  const centre = samples.reduce((sum, { value }) => sum + value, 0) / n;
  const rows = samples.map(({ angleDeg, value }) => {
    const turn = (order * angleDeg * Math.PI) / 180;
    return { c: Math.cos(turn), s: Math.sin(turn), y: value - centre };
  });
  const sum = (term: (row: { c: number; s: number; y: number }) => number) =>
    rows.reduce((total, row) => total + term(row), 0);
  const [c, s] = [sum((row) => row.c), sum((row) => row.s)];
  const [cc, ss, cs] = [sum((row) => row.c ** 2), sum((row) => row.s ** 2), sum((row) => row.c * row.s)];
  const [y, cy, sy] = [sum((row) => row.y), sum((row) => row.c * row.y), sum((row) => row.s * row.y)];

  // The inverse of the symmetric matrix [n c s; c cc cs; s cs ss], by cofactors.
  const cofactors = {
    mm: cc * ss - cs * cs,
    mc: s * cs - c * ss,
    ms: c * cs - s * cc,
    cc: n * ss - s * s,
    cs: c * s - n * cs,
    ss: n * cc - c * c,
  };
  const determinant = n * cofactors.mm + c * cofactors.mc + s * cofactors.ms;
  if (!(determinant > n ** 3 * leastSpread))
    throw new RangeError(
      `three angles must differ for a harmonic of order ${order}; got ${n} samples that do not; measure at more angles`,
    );
  const mean = (cofactors.mm * y + cofactors.mc * cy + cofactors.ms * sy) / determinant;
  const cosine = (cofactors.mc * y + cofactors.cc * cy + cofactors.cs * sy) / determinant;
  const sine = (cofactors.ms * y + cofactors.cs * cy + cofactors.ss * sy) / determinant;
  const residuals = rows.map((row) => row.y - mean - cosine * row.c - sine * row.s);
  const fitted = { mean: mean + centre, cosine, sine, residuals };
  if (n <= 3) return fitted;
  const noise = residuals.reduce((total, residual) => total + residual ** 2, 0) / (n - 3) / determinant;
  return {
    ...fitted,
    variances: {
      mean: noise * cofactors.mm,
      cosine: noise * cofactors.cc,
      sine: noise * cofactors.ss,
      cosineSine: noise * cofactors.cs,
    },
  };
}
