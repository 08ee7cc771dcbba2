import { roundMm } from "../lengths/roundMm";
import { fitHarmonic } from "./fitHarmonic";
import { spreadOfAngles } from "./spreadOfAngles";

/** How oval a bore is at one depth, or why that cannot be said. */
export type Ovality =
  | Readonly<{ kind: "too few readings"; distinctAngles: number; write: string }>
  | Readonly<{
      kind: "fitted";
      /** D: the mean diameter. */
      meanMm: number;
      /** a: how far the outline swings out and in about the mean circle, in radius; largest less smallest diameter is 4a. */
      amplitudeMm: number;
      /** phi: where the bore is widest, 0 to under 180 degrees; it is narrowest 90 degrees on. Null when it is not oval at all. */
      widestDeg: number | null;
      /** Null where no reading is left over to tell the noise by, and for the direction of a round bore. */
      standardErrors: Readonly<{ meanMm: number; amplitudeMm: number; widestDeg: number | null }> | null;
      /** Measured less fitted at each reading: a dent shows as one that stands out. */
      residualsMm: readonly number[];
      notes: readonly string[];
    }>;

const twoPointNote =
  "A diameter is taken between two points: a three-lobed bore reads the same at every angle, so these readings cannot see one.";
const noSpareNote = "Three readings leave none over: how far they may be out cannot be told from them.";
/** Past this the readings crowd into half of the turn, and the fit is carried out to where nobody measured. Chosen. */
const wideGapDeg = 90;

/**
 * Fits the mean diameter and the second harmonic to diameters taken at several angles of one depth.
 *
 *   d(t) = D + 2a cos 2(t - phi)
 *
 * Standard errors come from the residuals with n - 3 degrees of freedom; those of a and phi by first-order propagation, so they
 * are too small when a is no larger than its own error.
 *
 * @param readings angle in degrees and diameter in mm; angles 180 degrees apart are the same diameter
 * @returns the fit, or `too few readings` under three angles that lie 5 degrees apart
 * @throws RangeError when an angle is not finite or a diameter not above 0
 * @example ovality([{ angleDeg: 0, diameterMm: 17 }]).kind // "too few readings"
 * Source: least squares; ISO 12181-1 for the terms; undulations that a two-point diameter cannot see: ISO 4292.
 */
export function ovality(readings: readonly Readonly<{ angleDeg: number; diameterMm: number }>[]): Ovality {
  for (const { angleDeg, diameterMm } of readings)
    if (!(Number.isFinite(angleDeg) && Number.isFinite(diameterMm) && diameterMm > 0))
      throw new RangeError(
        `a reading must have a finite angle and a diameter above 0; got ${angleDeg} degrees, ${diameterMm} mm; measure again`,
      );
  const spread = spreadOfAngles(
    readings.map(({ angleDeg }) => angleDeg),
    180,
  );
  if (spread.distinct < 3)
    return {
      kind: "too few readings",
      distinctAngles: spread.distinct,
      write: "diameters at three angles or more, such as 0, 60 and 120 degrees",
    };
  const fit = fitHarmonic(
    readings.map(({ angleDeg, diameterMm }) => ({ angleDeg, value: diameterMm })),
    2,
  );
  const swingMm = Math.hypot(fit.cosine, fit.sine);
  const oval = roundMm(swingMm) > 0;
  return {
    kind: "fitted",
    meanMm: fit.mean,
    amplitudeMm: swingMm / 2,
    widestDeg: oval ? halfTurn((Math.atan2(fit.sine, fit.cosine) / 2) * (180 / Math.PI)) : null,
    standardErrors: fit.variances ? errorsOf(fit.cosine, fit.sine, fit.variances, oval) : null,
    residualsMm: fit.residuals,
    notes: [
      twoPointNote,
      ...(fit.variances ? [] : [noSpareNote]),
      ...(spread.widestGapDeg > wideGapDeg
        ? [
            `No reading was taken over ${Math.round(spread.widestGapDeg)} degrees of the turn: spread them evenly.`,
          ]
        : []),
    ],
  };
}

type Variances = NonNullable<ReturnType<typeof fitHarmonic>["variances"]>;

/** With u the unit vector along (cosine, sine): var(2a) = u'Vu, and var(2 phi) = v'Vv / (2a)^2 for v square to u. */
function errorsOf(cosine: number, sine: number, variances: Variances, oval: boolean) {
  const swing = Math.hypot(cosine, sine);
  const [c, s] = oval ? [cosine / swing, sine / swing] : [1, 0];
  const { cosine: vc, sine: vs, cosineSine } = variances;
  const along = c * c * vc + s * s * vs + 2 * c * s * cosineSine;
  const across = s * s * vc + c * c * vs - 2 * c * s * cosineSine;
  return {
    meanMm: Math.sqrt(variances.mean),
    amplitudeMm: Math.sqrt(Math.max(0, along)) / 2,
    widestDeg: oval ? (Math.sqrt(Math.max(0, across)) / swing / 2) * (180 / Math.PI) : null,
  };
}

function halfTurn(deg: number): number {
  const turned = ((deg % 180) + 180) % 180;
  return turned === 180 ? 0 : turned;
}
