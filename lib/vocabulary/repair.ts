import { z } from "zod";
import { idSchema, minutesSchema, proseSchema, riskSchema, sourceSchema, synonymsSchema } from "./words";

/** Something one does to mend: how long, what to look at before, how it goes wrong, and what proves that it worked. */
export const repairSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2).max(60),
  synonyms: synonymsSchema,
  families: z.array(idSchema).min(1),
  parts: z.array(idSchema).min(1),
  risk: riskSchema,
  minutes: z.strictObject({ low: minutesSchema, usual: minutesSchema, high: minutesSchema }),
  how: proseSchema,
  checkFirst: z.array(z.strictObject({ check: idSchema, why: z.string().min(5).max(200) })).default([]),
  goesWrong: z.array(z.string().min(5).max(200)).min(1),
  proof: z.array(z.strictObject({ check: idSchema, outcome: idSchema })).min(1),
  cautions: z.array(idSchema).default([]),
  source: sourceSchema,
});
export type Repair = z.infer<typeof repairSchema>;
