/**
 * A chance as a whole number of hundredths, never rounded to sure or to never.
 *
 * @param probability 0..1
 * @example chanceIn100(0.004) // "<1"
 */
export function chanceIn100(probability: number): string {
  const hundredths = Math.round(100 * probability);
  if (hundredths < 1) return probability > 0 ? "<1" : "0";
  if (hundredths > 99) return probability < 1 ? ">99" : "100";
  return String(hundredths);
}
