import type { LengthUnit } from "./lengthUnit";
import type { SplitLength } from "./splitLength";

/** What a number without a unit is in: sure, or the reason why it has to be asked. */
export type BareUnit = Readonly<{ unit: LengthUnit }> | Readonly<{ why: string }>;

/** No casing, slide or bench plug that is gauged is longer than this, so a bare number above it is in another unit. Chosen. */
const longestBareInch = 4;
/** Over the depth of any casing, under any plug's number in thou (a .459 in bore would be 459). Chosen. */
const longestBareMm = 200;

/**
 * Decides the unit of a number that was written without one, or says why it cannot be told.
 *
 * Without a field that expects a unit, only a leading point (`.669`, `0.669`) and a fraction are sure: both are inches.
 * In a field the number is taken in the field's unit unless its size or its spelling speaks against it.
 *
 * @param length a length taken apart, more than 0, its unit's word empty
 * @param expects the unit that the field it stands in asks for
 * @returns the unit, or the question's reason
 * Source: common practice.
 */
export function bareUnit(length: SplitLength, expects?: LengthUnit): BareUnit {
  const leadingPoint = length.amount < 1 && !length.fraction;
  switch (expects) {
    case "inch":
      return length.amount < longestBareInch
        ? { unit: "inch" }
        : { why: `inches were expected, and ${length.written} is too long for a bore in inches` };
    case "mm":
      if (length.fraction) return { why: "millimetres were expected, and a fraction is mostly inches" };
      if (leadingPoint) return { why: "millimetres were expected, and a leading point is mostly inches" };
      return length.amount <= longestBareMm
        ? { unit: "mm" }
        : { why: `millimetres were expected, and ${length.written} looks like a plug's number in thou` };
    case "thou":
      if (length.fraction || leadingPoint)
        return { why: `thou were expected, and ${length.written} looks like inches` };
      // Nobody reads hundredths of a thou at a bench: two decimals are how millimetres are written.
      if (length.decimals > 1)
        return { why: `thou were expected, and ${length.written} is finer than a tenth of a thou` };
      return length.amount <= longestBareInch * 1000
        ? { unit: "thou" }
        : { why: `thou were expected, and ${length.written} thou is over ${longestBareInch} in` };
    default:
      if (length.fraction || (leadingPoint && !length.comma)) return { unit: "inch" };
      return { why: `no unit was written with ${length.written}` };
  }
}
