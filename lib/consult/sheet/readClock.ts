import { z } from "zod";
import type { Fields } from "../../casebook/form/caseForm";

/** As much of a clock as can be counted with. */
const clockSchema = z.object({ minutes: z.number().min(0), since: z.iso.datetime().optional() });

/** The clock in a sheet's front matter; undefined where there is none, or none that can be read. */
export function readClock({ clock }: Fields): z.infer<typeof clockSchema> | undefined {
  return clockSchema.safeParse(clock).data;
}
