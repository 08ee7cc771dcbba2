import { z } from "zod";
import type { Readings } from "./settleWay";

/** In which order day, month and year stand in the dates of a file. */
export const dayOrders = ["dmy", "mdy", "ymd"] as const;
export type DayOrder = (typeof dayOrders)[number];

const clockTime = /[T ]+\d{1,2}:\d{2}(:\d{2}([.,]\d+)?)?( ?[ap]m)?( ?Z|[+-]\d{2}:?\d{2})?$/i;
const daySchema = z.iso.date();

/**
 * Reads a date in every order in which it can be meant. A year of four digits in front, or a month in words, leaves no
 * choice; of two numbers either may be the day, and of a year in two digits any of three the year. Such a year is the last
 * that is not ahead of today. The time of day is passed over.
 *
 * @param today year-month-day
 * @returns by order the day as year-month-day; empty for what is no date or no day of the calendar
 * @example dayReadings("03/04/2021", "2026-01-01") // dmy: 2021-04-03, mdy: 2021-03-04
 */
export function dayReadings(text: string, today: string): Readings<DayOrder, string> {
  const words = text.trim().replace(clockTime, "").trim();
  const all = (year: string, month: string, day: string) =>
    new Map(dayOrders.flatMap((order) => entry(order, year, month, day, today)));

  const [, year, yearMonth, yearDay] =
    /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(words) ?? /^(\d{4})(\d{2})(\d{2})$/.exec(words) ?? [];
  if (year && yearMonth && yearDay) return all(year, yearMonth, yearDay);

  const [, a, b, c] = /^(\d{1,2}) ?[-/. ] ?(\d{1,2}) ?[-/. ] ?(\d{4}|\d{2})$/.exec(words) ?? [];
  if (a && b && c) {
    const yearFirst = c.length === 2 && a.length === 2 ? entry("ymd", a, b, c, today) : [];
    return new Map([...entry("dmy", c, b, a, today), ...entry("mdy", c, a, b, today), ...yearFirst]);
  }
  const spoken = words.replace(/(\d)(st|nd|rd|th)\b/i, "$1").replace(/[-/.,\s]+/g, " ");
  const [, day, dayMonth = "", dayYear] = /^(\d{1,2}) ?([a-z]{3,9}) (\d{4}|\d{2})$/i.exec(spoken) ?? [];
  if (day && dayYear) return all(dayYear, numberOf(dayMonth), day);
  const [, month = "", monthDay, monthYear] = /^([a-z]{3,9}) (\d{1,2}) (\d{4}|\d{2})$/i.exec(spoken) ?? [];
  if (monthDay && monthYear) return all(monthYear, numberOf(month), monthDay);
  return new Map();
}

const months = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

/** The number of a month by its name, short or long or cut to four letters; `0` where it is none. */
function numberOf(name: string): string {
  const word = name.toLowerCase();
  const at = months.findIndex((long) => long.startsWith(word.slice(0, 3)));
  return at >= 0 && (months[at]?.startsWith(word) || word === "sept") ? String(at + 1) : "0";
}

function entry(
  order: DayOrder,
  year: string,
  month: string,
  day: string,
  today: string,
): [DayOrder, string][] {
  const whole = year.length === 4 ? year : fullYear(year, today);
  const written = `${whole}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  return daySchema.safeParse(written).success ? [[order, written]] : [];
}

function fullYear(year: string, today: string): string {
  const century = Number(today.slice(0, 2));
  return `${year > today.slice(2, 4) ? century - 1 : century}${year}`;
}
