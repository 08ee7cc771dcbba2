import { amountReadings, type DecimalMark } from "./amountReadings";
import type { Readings } from "./settleWay";

const hoursAndMinutes = /^(\d{1,3}) ?(?::|h|hrs?|hours?)(?: and)? ?(\d{1,2}) ?(?:m|mins?|minutes?|h)?$/i;
const unitAfter = /^(.*?[\d.,]) ?(h|hrs?|hours?|m|mins?|minutes?)\.?$/i;
const minutesAnHour = 60;

/**
 * Reads a time spent: `45`, `45 min`, `1.5 h`, `1,5 h`, `1:20`, `1 h 20`. A bare number is in the column's unit.
 *
 * @returns by decimal mark the minutes, to the hundredth; empty for what is no time
 */
export function minuteReadings(text: string, unit: "minutes" | "hours"): Readings<DecimalMark, number> {
  const words = text.trim();
  const [, hours, minutes] = hoursAndMinutes.exec(words) ?? [];
  if (hours !== undefined && minutes !== undefined && Number(minutes) < minutesAnHour) {
    const sum = minutesAnHour * Number(hours) + Number(minutes);
    return new Map([
      ["point", sum],
      ["comma", sum],
    ]);
  }
  const [, amount = words, after = unit] = unitAfter.exec(words) ?? [];
  const each = after.toLowerCase().startsWith("h") ? minutesAnHour : 1;
  return new Map(
    [...amountReadings(amount)].map(([mark, value]) => [mark, Math.round(100 * each * value) / 100]),
  );
}
