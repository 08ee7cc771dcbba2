import type { BoreMap } from "@/lib/gauging/bores/boreMap";
import { type LengthWords, lengthWords } from "@/lib/gauging/lengths/lengthWords";
import type { PlugReport } from "@/lib/gauging/plugs/plugReport";
import type { NumberRow } from "./Numbers";

const [inch, metric] = [lengthWords("inch"), lengthWords("mm")];

const row = (what: string, words: (lengths: LengthWords) => string): NumberRow => ({
  what,
  inches: words(inch),
  mm: words(metric),
});
const signed = (mm: number, lengths: LengthWords) => `${mm < 0 ? "−" : ""}${lengths.difference(mm)}`;
const between = (low: string | null, high: string | null) =>
  low === null && high === null ? "nothing bounds it" : `${low ?? "open"} to ${high ?? "open"}`;
const orNull = (mm: number | null, words: (mm: number) => string) => (mm === null ? null : words(mm));

/** The figures of plugs in one bore. */
export function plugRows({
  bore,
  reference,
  reduction,
  clearance,
  piston,
}: PlugReport): readonly NumberRow[] {
  const size =
    ({ lowMm, highMm }: PlugReport["bore"]) =>
    (lengths: LengthWords) =>
      between(orNull(lowMm, lengths.size), orNull(highMm, lengths.size));
  const interval = (low: number | null, high: number | null) => (lengths: LengthWords) =>
    between(
      orNull(low, (mm) => signed(mm, lengths)),
      orNull(high, (mm) => signed(mm, lengths)),
    );
  return [
    row("Size here", size(bore)),
    ...(reference ? [row("Size of the sibling", size(reference))] : []),
    ...(reduction ? [row("Tighter than the sibling by", interval(reduction.overMm, reduction.underMm))] : []),
    ...(piston
      ? [
          row(
            "Piston",
            (lengths) =>
              `${lengths.size(piston.diameterMm)}, ${
                piston.plusMinusMm === null
                  ? "no tolerance given"
                  : `give or take ${lengths.difference(piston.plusMinusMm)}`
              }`,
          ),
        ]
      : []),
    ...(clearance ? [row("Bore less piston", interval(clearance.leastMm, clearance.mostMm))] : []),
  ];
}

/** The figures of one section of a bore. */
export function sectionRows({ oval, dent }: BoreMap["sections"][number]): readonly NumberRow[] {
  if (oval.kind !== "fitted") return [];
  const { meanMm, amplitudeMm, widestDeg, standardErrors: errors } = oval;
  const giveOrTake = (words: string | undefined) => (words === undefined ? "" : ` ± ${words}`);
  const direction =
    widestDeg === null
      ? "none"
      : `${widestDeg.toFixed(1)}°${giveOrTake(errors?.widestDeg == null ? undefined : `${errors.widestDeg.toFixed(1)}°`)}`;
  return [
    row(
      "Mean across",
      (lengths) => `${lengths.size(meanMm)}${giveOrTake(errors ? lengths.error(errors.meanMm) : undefined)}`,
    ),
    row(
      "Longest less shortest",
      (lengths) =>
        `${lengths.difference(4 * amplitudeMm)}${giveOrTake(errors ? lengths.error(4 * errors.amplitudeMm) : undefined)}`,
    ),
    { what: "Widest at", inches: direction, mm: direction },
    ...(dent.kind === "dent" || dent.kind === "high"
      ? [
          row(
            `Stands out at ${dent.angleDeg}°`,
            (lengths) => `${signed(dent.residualMm, lengths)} ± ${lengths.error(dent.standardErrorMm)}`,
          ),
        ]
      : []),
  ];
}
