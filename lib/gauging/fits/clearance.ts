import type { Bracket } from "../bracket";
import { roundMm } from "../lengths/roundMm";

/** The diametral clearance of a piston in its bore: at least `leastMm` and under `mostMm`; negative is interference; null is open. */
export type Clearance = Readonly<{
  leastMm: number | null;
  mostMm: number | null;
  standing: "sure-clearance" | "sure-interference" | "undecided";
}>;

/**
 * Bounds the diametral clearance between a bracketed bore and a measured piston.
 *
 *   bore.low - (diameter + plusMinus) <= clearance < bore.high - (diameter - plusMinus)
 *
 * The piston's diameter is the largest that the micrometer found. A bent piston takes more room than any of its diameters:
 * a sure clearance here does not clear it of being bent.
 *
 * @param bore what is known of the bore, mm
 * @param piston.diameterMm over 0
 * @param piston.plusMinusMm how far the reading may be out either way, 0 or more; default 0
 * @returns the interval and its sign: `sure-clearance` when the least is above 0, `sure-interference` when the most is 0 or less
 * @throws RangeError when the diameter or its uncertainty is out of range
 * @example clearance({ lowMm: 17, highMm: 17.02 }, { diameterMm: 16.97 }).leastMm // 0.03
 * Source: ISO 286-1 for clearance and interference; interval arithmetic (Moore 1966).
 */
export function clearance(
  bore: Bracket,
  piston: Readonly<{ diameterMm: number; plusMinusMm?: number }>,
): Clearance {
  const { diameterMm, plusMinusMm = 0 } = piston;
  if (!(Number.isFinite(diameterMm) && diameterMm > 0 && Number.isFinite(plusMinusMm) && plusMinusMm >= 0))
    throw new RangeError(
      `a piston's diameter must be above 0 and its uncertainty 0 or more; got ${diameterMm} and ${plusMinusMm} mm; measure again`,
    );
  const leastMm = bore.lowMm === null ? null : roundMm(bore.lowMm - diameterMm - plusMinusMm);
  const mostMm = bore.highMm === null ? null : roundMm(bore.highMm - diameterMm + plusMinusMm);
  if (leastMm !== null && leastMm > 0) return { leastMm, mostMm, standing: "sure-clearance" };
  if (mostMm !== null && mostMm <= 0) return { leastMm, mostMm, standing: "sure-interference" };
  return { leastMm, mostMm, standing: "undecided" };
}
