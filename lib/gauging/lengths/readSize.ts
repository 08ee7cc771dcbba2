import { type LengthUnit, mmPerUnit } from "./lengthUnit";
import { type LengthReading, type ReadLength, readLength } from "./readLength";
import { roundMm } from "./roundMm";
import { splitLength } from "./splitLength";

/** What a length measures: a bore's, plug's or piston's diameter, how far a micrometer may be out, a depth, or the way across two legs. */
export type SizeKind = "diameter" | "uncertainty" | "depth" | "across";

/**
 * What each may be, in mm. Chosen: from a piccolo's joint to a big bell's throat; up to ten thou of doubt; down the longest slide; from a
 * small tuning slide to a wide dual bore.
 */
const rangeMm: Readonly<Record<SizeKind, Readonly<{ least: number; most: number; of: string }>>> = {
  diameter: { least: 2, most: 101.6, of: "a bore, plug or piston" },
  uncertainty: { least: 0, most: 0.254, of: "what a micrometer may be out by" },
  depth: { least: 0, most: 1000, of: "a depth" },
  across: { least: 10, most: 300, of: "the way across two legs" },
};
const units: readonly LengthUnit[] = ["inch", "thou", "mm"];
const shortName: Readonly<Record<LengthUnit, string>> = { inch: "in", thou: "thou", mm: "mm" };

/**
 * Reads a written length and holds it against what it can be: a bore of 16.88 in is asked about even where the unit was written.
 *
 * @param text as for `readLength`
 * @param kind what the length measures
 * @param expects the unit that the field asks for; default none
 * @returns as `readLength`; a question offers only what the length can be, and nothing where no unit makes sense of it
 * @example readSize("16.88 in", "diameter") // a question that offers "16.88 mm"
 * Source: common practice for the sizes.
 */
export function readSize(text: string, kind: SizeKind, expects?: LengthUnit): ReadLength {
  const read = readLength(text, expects ? { expects } : {});
  if (read.kind === "unreadable") return read;
  const { least, most, of } = rangeMm[kind];
  const fits = (mm: number) => mm >= least && mm <= most;
  if (read.kind === "question") return { ...read, could: read.could.filter(({ mm }) => fits(mm)) };
  if (fits(read.mm)) return read;
  return {
    kind: "question",
    got: text,
    why: `that is ${Number(read.mm.toFixed(3))} mm, too ${read.mm < least ? "little" : "much"} for ${of}`,
    could: inOtherUnits(text).filter(({ mm }) => fits(mm)),
  };
}

function inOtherUnits(text: string): LengthReading[] {
  const split = splitLength(text);
  if (!split) return [];
  return units.map((unit) => ({
    mm: roundMm(split.amount * mmPerUnit[unit]),
    unit,
    write: `${split.written} ${shortName[unit]}`,
  }));
}
