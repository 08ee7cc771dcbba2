import { z } from "zod";
import { idSchema, proseSchema, sourceSchema, synonymsSchema } from "./words";

/** What can hurt a person at the bench, what to do about it, and whose word goes before ours. */
export const cautionSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2).max(60),
  synonyms: synonymsSchema,
  hazard: proseSchema,
  guard: proseSchema,
  defersTo: z.string().min(5).max(200),
  source: sourceSchema,
});
export type Caution = z.infer<typeof cautionSchema>;
