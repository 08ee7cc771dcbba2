/**
 * Writes a number of a case for a table so that it is read back as it was, whatever the decimal mark is taken for: three
 * digits behind a point could be thousands, so a fourth is set behind them.
 *
 * @returns an empty text for nothing
 * @example writtenAmount(1.125) // "1.1250"
 */
export function writtenAmount(amount: number | undefined): string {
  if (amount === undefined) return "";
  const plain = /e/.test(String(amount)) ? amount.toFixed(smallestDigits) : String(amount);
  return /^[1-9]\d{0,2}\.\d{3}$/.test(plain) ? `${plain}0` : plain;
}

const smallestDigits = 10;
