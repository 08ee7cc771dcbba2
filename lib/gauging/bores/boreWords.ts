import type { LengthWords } from "../lengths/lengthWords";
import type { BoreSection } from "./boreSection";

/** What a section of a bore says, a sentence each. */
export type BoreWords = Readonly<{ oval: string; press?: string; dent?: string }>;

/**
 * Says a section in plain words. Angles are the technician's own, from wherever they count.
 *
 * @example boreWords(section, lengthWords("inch")).oval // "Oval by 1.6 thou, give or take 0.1: widest at 28 and 208 degrees, ..."
 */
export function boreWords({ oval, besideDent, press, dent }: BoreSection, lengths: LengthWords): BoreWords {
  if (oval.kind === "too few readings") return { oval: `Too few readings: write ${oval.write}.` };
  const { difference, size, error: errorOf } = lengths;
  const shown = besideDent.kind === "fitted" ? besideDent : oval;
  const { amplitudeMm, meanMm, standardErrors } = shown;
  const error = standardErrors
    ? `, give or take ${errorOf(4 * standardErrors.amplitudeMm)}`
    : ", how far that may be out is not known";
  const beside = shown === oval ? "" : " The reading that stands out is left aside.";
  return {
    oval: `Mean ${size(meanMm)}. Longest less shortest: ${difference(4 * amplitudeMm)}${error}.${beside}`,
    press: pressWords(press),
    ...dentWords(dent, lengths),
  };
}

function pressWords(press: BoreSection["press"]): string {
  switch (press.kind) {
    case "press": {
      const [one, other] = press.atDeg.map((deg) => Math.round(deg));
      const ends = `at ${one} and ${other} degrees`;
      if (press.plusMinusDeg === null)
        return `Widest ${ends}: to round it, press there. Three readings do not check one another; take more first.`;
      return `Widest ${ends}, give or take ${Math.max(1, Math.round(press.plusMinusDeg))}: to round it, press there.`;
    }
    case "not shown":
      return "No oval is shown: these readings scatter by as much. Do not press by them.";
    case "slight":
      return `Widest at ${Math.round(press.atDeg[0])} degrees, but under half a thou (0.013 mm): call it round and let it be.`;
    case "round":
      return "Round, as far as diameters tell.";
    case "too few readings":
      return "Too few readings for a direction.";
  }
}

function dentWords(
  dent: BoreSection["dent"],
  { difference, error }: LengthWords,
): Readonly<{ dent?: string }> {
  switch (dent.kind) {
    case "too few readings":
      return { dent: `Whether there is a dent cannot be told: write ${dent.write}.` };
    case "none":
      return {};
    case "dent":
      return {
        dent: `At ${Math.round(dent.angleDeg)} degrees the bore is ${difference(dent.residualMm)} smaller than any oval explains, give or take ${error(dent.standardErrorMm)}: a dent at one end of that diameter, if the reading is right. Take it again.`,
      };
    case "high":
      return {
        dent: `At ${Math.round(dent.angleDeg)} degrees the bore is ${difference(dent.residualMm)} larger than any oval explains, give or take ${error(dent.standardErrorMm)}: a groove or a slip in reading. Take it again.`,
      };
  }
}
