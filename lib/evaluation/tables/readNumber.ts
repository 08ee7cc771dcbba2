const numberPattern = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/**
 * Reads a decimal number: digits with an optional sign, point and exponent, and nothing else.
 *
 * @returns undefined for anything else, and for what is too large for a double
 * @example readNumber("-1.5e3") // -1500
 */
export function readNumber(text: string): number | undefined {
  if (!numberPattern.test(text)) return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}
