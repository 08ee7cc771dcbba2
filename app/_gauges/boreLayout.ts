import type { BoreMap } from "@/lib/gauging/bores/boreMap";
import { mmPerUnit } from "@/lib/gauging/lengths/lengthUnit";
import type { ShownUnit } from "../_components/readUnit";

/** How sections are exaggerated: one scale for all of a bore, so that they compare. */
export type BoreScale = Readonly<{
  /** Drawn units for a mm that the outline departs from its mean circle. */
  unitsPerMm: number;
  /** How many times as strong as the size the shape is drawn. */
  exaggeration: number;
  /** The printed scale: its length drawn, and in words. */
  jaw: Readonly<{ length: number; words: string }>;
}>;

/** Drawn radius of the mean circle, and how far the strongest departure is drawn from it. */
export const circleRadius = 104;
const strongest = 30;
/** A bore that departs by less than a fifth of a thou is drawn round: its noise is not blown up. */
const leastDepartureMm = 0.005;
const longestJaw = 120;
const jawSteps = [1, 2, 5].flatMap((one) => [0.001, 0.01, 0.1, 1, 10].map((power) => one * power));

/** Chooses the exaggeration by the reading or oval that departs most; undefined where no section could be fitted. */
export function boreScale(
  sections: BoreMap["sections"],
  readings: readonly (readonly Readonly<{ diameterMm: number }>[])[],
  unit: ShownUnit,
): BoreScale | undefined {
  const departures = sections.flatMap(({ oval, besideDent }, index) => {
    if (oval.kind !== "fitted") return [];
    const base = besideDent.kind === "fitted" ? besideDent : oval;
    const measured = (readings[index] ?? []).map(({ diameterMm }) => Math.abs(diameterMm - base.meanMm) / 2);
    return [base.amplitudeMm, ...measured];
  });
  const mean = sections.find(({ oval }) => oval.kind === "fitted")?.oval;
  if (mean?.kind !== "fitted") return undefined;
  const unitsPerMm = strongest / Math.max(leastDepartureMm, ...departures);
  const stepMm = unit === "mm" ? 1 : mmPerUnit.thou;
  const steps = [...jawSteps].sort((a, b) => a - b);
  const step = steps.findLast((size) => size * stepMm * unitsPerMm <= longestJaw) ?? steps[0] ?? 1;
  return {
    unitsPerMm,
    exaggeration: Number((unitsPerMm / (circleRadius / (mean.meanMm / 2))).toPrecision(2)),
    jaw: {
      length: step * stepMm * unitsPerMm,
      words: `${Number(step.toPrecision(1))} ${unit === "mm" ? "mm" : "thou"} of radius`,
    },
  };
}
