const dayMs = 86_400_000;

/**
 * The same day of the month before; where that month is shorter, its last day.
 *
 * @param day year-month-day
 * @example monthBefore("2026-03-31") // "2026-02-28"
 */
export function monthBefore(day: string): string {
  const [year = 0, month = 1, date = 1] = day.split("-").map(Number);
  const lastOfBefore = new Date(Date.UTC(year, month - 1, 1) - dayMs);
  lastOfBefore.setUTCDate(Math.min(date, lastOfBefore.getUTCDate()));
  return lastOfBefore.toISOString().slice(0, 10);
}
