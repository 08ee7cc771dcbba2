import { fitHarmonic } from "./fitHarmonic";
import { spreadOfAngles } from "./spreadOfAngles";

/** The reference circle of an outline, and how far the outline departs from it, or why that cannot be said. */
export type ReferenceCircle =
  | Readonly<{ kind: "too few readings"; distinctAngles: number; write: string }>
  | Readonly<{
      kind: "fitted";
      radiusMm: number;
      /** The circle's centre from the point that the radii were taken from. */
      centreMm: Readonly<{ x: number; y: number }>;
      /** RONp: the highest peak outside the circle. */
      peakMm: number;
      /** RONv: the deepest valley inside it. */
      valleyMm: number;
      /** RONt: peak to valley. */
      peakToValleyMm: number;
      /** RONq: root of the mean square deviation. */
      rootMeanSquareMm: number;
      deviationsMm: readonly number[];
    }>;

/**
 * Fits the least-squares reference circle to radii taken around one section.
 *
 *   r(t) = R + x cos t + y sin t + deviation
 *
 * This is the usual linear form, good while the centre is off by little against the radius (the error is about x^2 / 2R).
 *
 * @param readings angle in degrees and radius in mm, from one point near the centre
 * @returns the circle and the deviations in ISO 12181-1 terms, or `too few readings` under three angles that lie 5 degrees apart
 * @throws RangeError when an angle is not finite or a radius not above 0
 * Source: ISO 12181-1 (LSCI, RONp, RONv, RONt, RONq).
 */
export function leastSquaresCircle(
  readings: readonly Readonly<{ angleDeg: number; radiusMm: number }>[],
): ReferenceCircle {
  for (const { angleDeg, radiusMm } of readings)
    if (!(Number.isFinite(angleDeg) && Number.isFinite(radiusMm) && radiusMm > 0))
      throw new RangeError(
        `a reading must have a finite angle and a radius above 0; got ${angleDeg} degrees, ${radiusMm} mm; measure again`,
      );
  const { distinct } = spreadOfAngles(
    readings.map(({ angleDeg }) => angleDeg),
    360,
  );
  if (distinct < 3)
    return {
      kind: "too few readings",
      distinctAngles: distinct,
      write: "radii at three angles or more, such as 0, 120 and 240 degrees",
    };
  const fit = fitHarmonic(
    readings.map(({ angleDeg, radiusMm }) => ({ angleDeg, value: radiusMm })),
    1,
  );
  const peakMm = Math.max(0, ...fit.residuals);
  const valleyMm = Math.max(0, ...fit.residuals.map((residual) => -residual));
  const meanSquare = fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0) / readings.length;
  return {
    kind: "fitted",
    radiusMm: fit.mean,
    centreMm: { x: fit.cosine, y: fit.sine },
    peakMm,
    valleyMm,
    peakToValleyMm: peakMm + valleyMm,
    rootMeanSquareMm: Math.sqrt(meanSquare),
    deviationsMm: fit.residuals,
  };
}
