/** A piston in its bore, and what drives air through the gap. */
export type AnnularGap = Readonly<{
  /** D, over 0. */
  diameterMm: number;
  /** The DIAMETRAL clearance, bore less piston, 0 or more; the formula's radial gap is half of it. */
  clearanceMm: number;
  /** L, over 0: how far the air has to creep. */
  lengthMm: number;
  /** dP, 0 or more. */
  pressurePa: number;
  /** mu, over 0: 1.81e-5 Pa s for air at room temperature. */
  viscosityPaS: number;
  /** e, 0 when the piston stands in the middle (default), 1 when it touches. */
  eccentricity?: number;
}>;

/** Cubic metres a second to millilitres a minute. */
const mlPerMinute = 6e7;

/**
 * The laminar flow through the dry gap round a piston.
 *
 *   Q = pi D c^3 dP / (12 mu L) (1 + 1.5 e^2),  c = half of the diametral clearance
 *
 * Leaks compare as the cube of the clearance: twice the clearance leaks eight times as much. Oil in the gap holds more than this says.
 *
 * @param gap see `AnnularGap`
 * @returns millilitres a minute, 0 or more
 * @throws RangeError when a value is out of its range
 * Source: Rabie, Fluid Power Engineering, eq. 2.19.
 */
export function annularLeak(gap: AnnularGap): number {
  const { diameterMm, clearanceMm, lengthMm, pressurePa, viscosityPaS, eccentricity = 0 } = gap;
  const above = diameterMm > 0 && lengthMm > 0 && viscosityPaS > 0;
  const notBelow = clearanceMm >= 0 && pressurePa >= 0 && eccentricity >= 0 && eccentricity <= 1;
  if (!(above && notBelow))
    throw new RangeError(
      `diameter, length and viscosity must be above 0, clearance and pressure 0 or more, eccentricity 0 to 1; got ${JSON.stringify(gap)}; measure again`,
    );
  const radialGapM = clearanceMm / 2 / 1000;
  const concentric =
    (Math.PI * (diameterMm / 1000) * radialGapM ** 3 * pressurePa) / (12 * viscosityPaS * (lengthMm / 1000));
  return concentric * (1 + 1.5 * eccentricity ** 2) * mlPerMinute;
}
