import { z } from "zod";
import {
  idOf,
  idSchema,
  minutesSchema,
  proseSchema,
  riskSchema,
  sourceSchema,
  synonymsSchema,
} from "./words";

/** Something one does to mend: how long, what to look at before, how it goes wrong, and what proves that it worked. */
export const repairSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2).max(60),
  synonyms: synonymsSchema,
  families: z.array(idOf("instruments")).min(1),
  parts: z.array(idOf("parts")).min(1),
  risk: riskSchema,
  minutes: z.strictObject({ low: minutesSchema, usual: minutesSchema, high: minutesSchema }),
  how: proseSchema,
  checkFirst: z.array(z.strictObject({ check: idOf("checks"), why: z.string().min(5).max(200) })).default([]),
  goesWrong: z.array(z.string().min(5).max(200)).min(1),
  proof: z.array(z.strictObject({ check: idOf("checks"), outcome: idSchema })).min(1),
  cautions: z.array(idOf("cautions")).default([]),
  source: sourceSchema,
});
export type Repair = z.infer<typeof repairSchema>;
