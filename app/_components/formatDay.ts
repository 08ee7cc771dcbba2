const words = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});

/**
 * A day as written on a job ticket.
 *
 * @param day year-month-day
 * @example formatDay("2026-03-09") // "9 March 2026"
 */
export function formatDay(day: string): string {
  return words.format(new Date(`${day}T00:00:00Z`));
}
