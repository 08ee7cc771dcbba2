import type { Bracket } from "../bracket";
import type { LengthWords } from "../lengths/lengthWords";
import type { PlugReport } from "./plugReport";

/** What plugs say, a sentence each; undefined where there is nothing to say. */
export type PlugWords = Readonly<{
  size: string;
  reduction?: string;
  clearance?: string;
  fit?: string;
  leak?: string;
}>;

/**
 * Says a report on plugs in plain words, what is not known included.
 *
 * @param report from `plugReport`
 * @param names of the bore and of its reference, as the technician calls them
 * @param lengths the units to say it in
 * @example plugWords(report, { bore: "casing 2", reference: "casing 1" }, lengthWords("inch")).size
 * // "Casing 2: at least .6690 in and under .6710 in."
 */
export function plugWords(
  { bore, reduction, clearance, fit, leak }: PlugReport,
  names: Readonly<{ bore: string; reference: string }>,
  lengths: LengthWords,
): PlugWords {
  return {
    size: `${capital(names.bore)}: ${sizeWords(bore, lengths)}.`,
    ...(reduction ? { reduction: reductionWords(reduction, names, lengths) } : {}),
    ...(clearance ? { clearance: clearanceWords(clearance, lengths) } : {}),
    ...(fit ? { fit: fitWords(fit) } : {}),
    ...(leak ? { leak: leakWords(leak, lengths) } : {}),
  };
}

function sizeWords({ lowMm, highMm }: Bracket, { size }: LengthWords): string {
  if (lowMm === null && highMm === null) return "no plug bounds it on either side";
  if (lowMm === null) return `under ${size(highMm ?? 0)}; nothing bounds it below`;
  return highMm === null
    ? `at least ${size(lowMm)}; nothing bounds it above`
    : `at least ${size(lowMm)} and under ${size(highMm)}`;
}

function reductionWords(
  { overMm, underMm, standing, missing }: NonNullable<PlugReport["reduction"]>,
  { bore, reference }: Readonly<{ bore: string; reference: string }>,
  { difference }: LengthWords,
): string {
  const open = missing.length > 0 ? ` To bound it further: ${missing.join("; ")}.` : "";
  switch (standing) {
    case "sure-reduced":
      return `${capital(bore)} is tighter than ${reference} by more than ${difference(overMm ?? 0)}${
        underMm === null ? "; nothing says by how much more" : ` and less than ${difference(underMm)}`
      }.${open}`;
    case "sure-larger":
      return `${capital(bore)} is wider than ${reference} by more than ${difference(underMm ?? 0)}${
        overMm === null ? "; nothing says by how much more" : ` and less than ${difference(overMm)}`
      }.${open}`;
    case "undecided": {
      const wider = overMm === null ? "any amount wider" : sided(overMm, "tighter", "wider", difference);
      const tighter =
        underMm === null ? "any amount tighter" : sided(underMm, "tighter", "wider", difference);
      return `Not decided: ${bore} may be anything from ${wider} to ${tighter} than ${reference}.${open}`;
    }
  }
}

function clearanceWords(
  { leastMm, mostMm, standing }: NonNullable<PlugReport["clearance"]>,
  { difference }: LengthWords,
): string {
  switch (standing) {
    case "sure-clearance":
      return `The piston runs clear, for certain: by at least ${difference(leastMm ?? 0)}${
        mostMm === null ? "; nothing says by how much more" : ` and under ${difference(mostMm)}`
      }. A bent piston takes more room than it measures.`;
    case "sure-interference":
      return `The piston is too big for the bore here, for certain: by more than ${difference(mostMm ?? 0)}${
        leastMm === null ? "; nothing says by how much more" : ` and at most ${difference(leastMm)}`
      }.`;
    case "undecided": {
      const least =
        leastMm === null ? "any amount too tight" : sided(leastMm, "clear", "too tight", difference);
      const most = mostMm === null ? "any amount clear" : sided(mostMm, "clear", "too tight", difference);
      return `Not decided: from ${least} to ${most}.`;
    }
  }
}

const sided = (mm: number, above: string, below: string, difference: LengthWords["difference"]) =>
  `${difference(mm)} ${mm < 0 ? below : above}`;

function fitWords(fit: NonNullable<PlugReport["fit"]>): string {
  switch (fit.kind) {
    case "within":
      return `As close as a ${fit.names[0]} fit of ISO 286${
        fit.names.length > 1 ? ` (also within ${fit.names.slice(1).join(", ")})` : ""
      }.`;
    case "could be":
      return `It could be a ${fit.names.join(" or ")} fit of ISO 286; the bracket is too wide to say.`;
    case "none":
      return `No ISO 286 fit can be named: ${fit.why}.`;
  }
}

function leakWords(
  { least, most, goodClearanceMm }: NonNullable<PlugReport["leak"]>,
  { difference }: LengthWords,
): string {
  const than = `as a good valve of ${difference(goodClearanceMm)} clearance, both dry and lying alike`;
  if (most === null)
    return `It leaks at least ${times(least)} times as much air ${than}; nothing says how much more.`;
  return `It leaks ${times(least)} to ${times(most)} times as much air ${than}.`;
}

const times = (ratio: number) => (ratio >= 10 ? ratio.toFixed(0) : ratio.toFixed(1));
const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
