import type { Clearance } from "./clearance";

/** How much air a valve leaks against a good one: `least` to `most` times; null where nothing bounds it. */
export type LeakRatio = Readonly<{ least: number; most: number | null; goodClearanceMm: number }>;

/** 1.5 thou: the middle of the one to two thou that is called a good fit. Common practice. */
const usualClearanceMm = 0.0381;

/**
 * Compares a valve's leak with a good valve's of the same size, length and pressure, the pistons lying alike.
 *
 *   leak / good leak = (clearance / good clearance)^3
 *
 * @param clearance the bounds, mm; a least below 0 leaks nothing
 * @param goodClearanceMm diametral clearance of the good valve, over 0; default 1.5 thou
 * @returns multiples of the good valve's leak, or undefined where interference is sure: nothing moves there, so nothing is compared
 * @throws RangeError when the good clearance is not above 0
 * @example leakRatio({ leastMm: 0.0762, mostMm: 0.0762, standing: "sure-clearance" })?.least // 8
 * Source: Rabie, Fluid Power Engineering, eq. 2.19 (the cube; all else cancels).
 */
export function leakRatio(
  { leastMm, mostMm, standing }: Clearance,
  goodClearanceMm = usualClearanceMm,
): LeakRatio | undefined {
  if (!(goodClearanceMm > 0))
    throw new RangeError(`a good clearance must be above 0; got ${goodClearanceMm} mm; measure a good valve`);
  if (standing === "sure-interference") return undefined;
  const times = (mm: number) => (Math.max(0, mm) / goodClearanceMm) ** 3;
  return {
    least: leastMm === null ? 0 : times(leastMm),
    most: mostMm === null ? null : times(mostMm),
    goodClearanceMm,
  };
}
