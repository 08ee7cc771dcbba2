import { mmPerUnit } from "./lengthUnit";

/** The finest step shown: a tenth of a thou, a thousandth of a millimetre. A good micrometer tells no more. */
const decimals = { thou: 1, mm: 3 };

/**
 * Writes a length or a difference of lengths in the unit that the user likes.
 *
 * @param mm millimetres, finite, of either sign; an end that nothing bounds is the caller's to put in words
 * @param unit `thou` gives `664.5 thou`, `mm` gives `16.878 mm`
 * @returns text that `readLength` reads back to within half of the last digit, where it is not negative
 * @throws RangeError when the length is not finite
 * @example formatLength(0.0254, "thou") // "1.0 thou"
 */
export function formatLength(mm: number, unit: "thou" | "mm"): string {
  if (!Number.isFinite(mm))
    throw new RangeError(`a length must be finite; got ${mm}; say in words that nothing bounds it`);
  const digits = (mm / mmPerUnit[unit]).toFixed(decimals[unit]);
  const amount = Number(digits) === 0 ? digits.replace("-", "") : digits;
  return `${amount} ${unit}`;
}
