import { bareUnit } from "./bareUnit";
import { type LengthUnit, mmPerUnit } from "./lengthUnit";
import { roundMm } from "./roundMm";
import { type SplitLength, splitLength } from "./splitLength";

/** One thing that a doubtful length could mean, and how to write it so that there is no doubt. */
export type LengthReading = Readonly<{ mm: number; unit: LengthUnit; write: string }>;

/** What a written length came to. Only `length` may be computed with; the other two go back to whoever wrote it. */
export type ReadLength =
  | Readonly<{ kind: "length"; mm: number }>
  | Readonly<{ kind: "question"; got: string; why: string; could: readonly LengthReading[] }>
  | Readonly<{ kind: "unreadable"; got: string; write: string }>;

const howToWrite = "a number with its unit, such as .6645 in, 664.5 thou or 16.88 mm";
/** Past a metre, and under a thousandth of a millimetre, a reading is not worth offering. Chosen. */
const offeredMm = { least: 0.001, most: 1000 };
const unitsOffered: readonly LengthUnit[] = ["mm", "inch", "thou"];
const shortName: Readonly<Record<LengthUnit, string>> = { inch: "in", thou: "thou", mm: "mm" };

const wordsPerUnit: Readonly<Record<LengthUnit, readonly string[]>> = {
  inch: ["in", "inch", "inches", '"', "″", "”", "''", "′′"],
  thou: ["thou", "thous", "thousandth", "thousandths", "thousandths of an inch"],
  mm: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
};
const mmPerWord: ReadonlyMap<string, number> = new Map([
  ...unitsOffered.flatMap((unit) => wordsPerUnit[unit].map((word) => [word, mmPerUnit[unit]] as const)),
  ["cm", 10],
  ["µm", 0.001],
  ["μm", 0.001],
  ["um", 0.001],
]);

/**
 * Reads a length as it is written at the bench, and holds it in millimetres (1 in = 25.4 mm exactly).
 *
 * A unit that is not sure is asked about, never guessed: see `bareUnit` for numbers without one. `mil` is asked about as well,
 * being a thou to some and a millimetre to others, and so is `1,250 thou`, whose comma may part thousands.
 *
 * @param text such as `.6645`, `0.6645 in`, `664.5 thou`, `16.88 mm`, `16,88 mm`, `1/4 in`, `1 1/4"`
 * @param options.expects the unit that the field asks for; default none
 * @returns the length, zero or more; or a question with what it could be; or what to write instead. It never throws.
 * @example readLength("664.5 thou") // { kind: "length", mm: 16.8783 }
 * Source: common practice for a leading point and for fractions, both inches.
 */
export function readLength(text: string, options: Readonly<{ expects?: LengthUnit }> = {}): ReadLength {
  const split = splitLength(text);
  if (!split) return { kind: "unreadable", got: text, write: howToWrite };
  if (split.unitWord === "") return readBare(text, split, options.expects);
  if (split.unitWord === "mil" || split.unitWord === "mils")
    return ask(text, "a mil is a thou to some and a millimetre to others", split, ["thou", "mm"]);
  const mmPer = mmPerWord.get(split.unitWord);
  if (mmPer === undefined) return { kind: "unreadable", got: text, write: howToWrite };
  if (mmPer === mmPerUnit.thou && partsThousands(split)) return askAboutComma(text, split);
  return { kind: "length", mm: roundMm(split.amount * mmPer) };
}

function readBare(text: string, split: SplitLength, expects?: LengthUnit): ReadLength {
  if (split.amount === 0) return { kind: "length", mm: 0 };
  if (expects === "thou" && partsThousands(split)) return askAboutComma(text, split);
  const bare = bareUnit(split, expects);
  if ("why" in bare) return ask(text, bare.why, split, unitsOffered);
  return { kind: "length", mm: roundMm(split.amount * mmPerUnit[bare.unit]) };
}

function ask(got: string, why: string, split: SplitLength, units: readonly LengthUnit[]): ReadLength {
  const could = units
    .map((unit) => ({
      mm: roundMm(split.amount * mmPerUnit[unit]),
      unit,
      write: `${split.written} ${shortName[unit]}`,
    }))
    .filter(({ mm }) => mm >= offeredMm.least && mm <= offeredMm.most);
  return { kind: "question", got, why, could };
}

/** `1,250`: a decimal comma, or the comma of thousands? In millimetres and inches the latter would be metres long. */
function partsThousands(split: SplitLength): boolean {
  return split.comma && split.decimals === 3 && split.amount >= 1;
}

function askAboutComma(got: string, split: SplitLength): ReadLength {
  const could = [split.amount * 1000, split.amount].map((thou) => ({
    mm: roundMm(thou * mmPerUnit.thou),
    unit: "thou" as const,
    write: `${Number(thou.toFixed(3))} thou`,
  }));
  return { kind: "question", got, why: "the comma may part thousands or be a decimal point", could };
}
