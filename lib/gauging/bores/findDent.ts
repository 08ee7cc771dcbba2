import { fitHarmonic } from "./fitHarmonic";
import { spreadOfAngles } from "./spreadOfAngles";
import { tailOfT } from "./tailOfT";

type Diameter = Readonly<{ angleDeg: number; diameterMm: number }>;

/** The one reading that no oval explains, or why none is named. */
export type FoundDent =
  | Readonly<{ kind: "too few readings"; write: string }>
  | Readonly<{ kind: "none" }>
  | Readonly<{
      kind: "dent" | "high";
      /** Place in the readings. */
      index: number;
      angleDeg: number;
      /** Reading less what the oval through all others foretells there: negative is a dent. */
      residualMm: number;
      standardErrorMm: number;
      /** Chance that the noise of a dentless bore makes any reading stand out so far. */
      chance: number;
    }>;

/** A bore gauge reads to a tenth of a thou; what is rounded so scatters by a step over the root of 12. Source: JCGM 100, 4.3.7. */
const roundingMm = 0.00254 / Math.sqrt(12);
/** A reading that noise would bring forth in one sound bore of twenty is not called a dent. Chosen, as is usual. */
const mostChance = 0.05;

/**
 * Finds the reading that stands out from the oval through all the others.
 *
 *   t_i = (y_i - yhat_i) / (s_i sqrt(1 + h_i)),  yhat_i, s_i, h_i from the fit without reading i;  chance = n P(|T| > |t|)
 *
 * The scatter s is never taken for less than the rounding of a gauge that reads to a tenth of a thou. One reading at a time is left
 * out, so two dents at once may hide each other.
 *
 * @param readings diameters at five different angles or more; a dent lies at one end of the diameter, at which cannot be told
 * @returns `dent` for a diameter that is too small, `high` for one too large (a groove, or a slip in reading)
 * Source: Cook & Weisberg 1982, Residuals and Influence in Regression, 2.2 (deletion residuals, Bonferroni bound).
 */
export function findDent(readings: readonly Diameter[]): FoundDent {
  if (distinctAngles(readings) < 5)
    return {
      kind: "too few readings",
      write: "diameters at five angles or more to tell a dent from an oval",
    };
  const candidates = readings.flatMap((reading, index) => {
    const found = standOut(
      reading,
      readings.filter((_, other) => other !== index),
    );
    return found ? [{ index, angleDeg: reading.angleDeg, ...found }] : [];
  });
  const [worst] = candidates.sort((a, b) => a.chance - b.chance);
  if (!worst) return { kind: "none" };
  const chance = Math.min(1, worst.chance * readings.length);
  if (chance > mostChance) return { kind: "none" };
  return { kind: worst.residualMm < 0 ? "dent" : "high", ...worst, chance };
}

/** How far one reading lies from what the rest foretell, and the chance of that; undefined where the rest do not tell. */
function standOut({ angleDeg, diameterMm }: Diameter, others: readonly Diameter[]) {
  if (distinctAngles(others) < 4) return undefined;
  const fit = fitHarmonic(
    others.map((other) => ({ angleDeg: other.angleDeg, value: other.diameterMm })),
    2,
  );
  const degrees = others.length - 3;
  const scatterMm = Math.sqrt(fit.residuals.reduce((sum, mm) => sum + mm * mm, 0) / degrees);
  const turn = (2 * angleDeg * Math.PI) / 180;
  const residualMm = diameterMm - (fit.mean + fit.cosine * Math.cos(turn) + fit.sine * Math.sin(turn));
  const standardErrorMm = Math.max(scatterMm, roundingMm) * Math.sqrt(1 + leverage(turn, others));
  return { residualMm, standardErrorMm, chance: tailOfT(residualMm / standardErrorMm, degrees) };
}

/** x' (X'X)^-1 x of an angle against the readings that the oval was fitted to, by Gaussian elimination. */
function leverage(turn: number, others: readonly Diameter[]): number {
  const rowAt = (angle: number) => [1, Math.cos(angle), Math.sin(angle)];
  const rows = others.map(({ angleDeg }) => rowAt((2 * angleDeg * Math.PI) / 180));
  const x = rowAt(turn);
  const left = [0, 1, 2].map((i) => [
    ...[0, 1, 2].map((j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
    x[i] ?? 0,
  ]);
  // The matrix is positive definite, so no pivoting is needed.
  for (const [at, pivot] of left.entries())
    for (const [below, row] of left.entries()) {
      if (below === at) continue;
      const factor = (row[at] ?? 0) / (pivot[at] ?? 1);
      left[below] = row.map((value, column) => value - factor * (pivot[column] ?? 0));
    }
  return left.reduce((sum, row, at) => sum + ((row[3] ?? 0) / (row[at] ?? 1)) * (x[at] ?? 0), 0);
}

function distinctAngles(readings: readonly Diameter[]): number {
  return spreadOfAngles(
    readings.map(({ angleDeg }) => angleDeg),
    180,
  ).distinct;
}
