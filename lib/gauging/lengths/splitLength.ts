/** A written length, taken apart: the amount, how it was spelled, and the unit's word where there was one. */
export type SplitLength = Readonly<{
  amount: number;
  /** The amount as it was written, without the unit. */
  written: string;
  /** The unit's word in small letters without a full stop; empty when none was written. */
  unitWord: string;
  fraction: boolean;
  comma: boolean;
  /** Digits behind the point or comma. */
  decimals: number;
}>;

/** A longer text is a sentence, not a length. */
const longestText = 40;
const fractionShape = /^(?:(\d{1,3})(?:\s+|-))?(\d{1,3})\/(\d{1,3})$/;
const decimalShape = /^(\d{0,6})(?:([.,])(\d{0,9}))?$/;
const shape = /^([\d.,/\s-]*\d[.,]?)\s*([^\d\s.,/-][^\d]*)?$/;

/**
 * Takes a written length apart without deciding what its unit is.
 *
 * @param text such as `.6645`, `16,88 mm`, `1 1/4"`, `1-1/4 in.`
 * @returns the parts, or undefined when the text is no plain length of zero or more
 * @example splitLength("16,88 mm") // { amount: 16.88, written: "16,88", unitWord: "mm", fraction: false, comma: true, decimals: 2 }
 */
export function splitLength(text: string): SplitLength | undefined {
  if (text.length > longestText) return undefined;
  const plain = text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, spellFraction)
    .trim()
    .toLowerCase();
  const match = shape.exec(plain);
  const written = match?.[1]?.trim();
  if (written === undefined) return undefined;
  const unitWord = (match?.[2] ?? "").trim().replace(/\.$/, "");
  return readFraction(written, unitWord) ?? readDecimal(written, unitWord);
}

/** `¼` to ` 1/4`, with the space that keeps `1¼` from becoming 11/4. */
function spellFraction(sign: string): string {
  return ` ${sign.normalize("NFKD").replace("\u2044", "/")}`;
}

function readFraction(written: string, unitWord: string): SplitLength | undefined {
  const match = fractionShape.exec(written);
  if (!match) return undefined;
  const amount = Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]);
  if (!Number.isFinite(amount)) return undefined;
  return { amount, written, unitWord, fraction: true, comma: false, decimals: 0 };
}

function readDecimal(written: string, unitWord: string): SplitLength | undefined {
  const match = decimalShape.exec(written);
  if (!match) return undefined;
  const decimals = match[3] ?? "";
  const amount = Number(`${match[1] || "0"}.${decimals || "0"}`);
  return { amount, written, unitWord, fraction: false, comma: match[2] === ",", decimals: decimals.length };
}
