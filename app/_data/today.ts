import "server-only";
import { daySchema } from "@/lib/casebook/day";

/**
 * The day it is, year-month-day, by Greenwich. `BENCHLORE_TODAY` puts another in its place, so that one can see (and a test
 * can show) what comes back later.
 *
 * @throws when the setting is no day
 */
export function today(): string {
  const setting = process.env.BENCHLORE_TODAY;
  if (!setting) return new Date().toISOString().slice(0, 10);
  const day = daySchema.safeParse(setting);
  if (day.success) return day.data;
  throw new Error(`BENCHLORE_TODAY must be a day such as 2026-03-09; got '${setting}'; mend or unset it`);
}
