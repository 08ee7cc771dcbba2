import { z } from "zod";

/** A calendar day, checked to exist: 31 February is refused. */
export const daySchema = z.iso.date({
  error: "a day that exists, written year-month-day, such as 2026-03-09",
});
