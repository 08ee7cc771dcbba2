import { z } from "zod";
import { idOf, idSchema, synonymsSchema } from "./words";

/**
 * A part of an instrument: one node of the part taxonomy.
 * `numbered` parts are counted from the mouthpiece or player's first finger (`casing 2`).
 * `belongsTo` ties a part to the numbered part it belongs to (piston 3 belongs to valve 3).
 * `swapsInto` names the part that it can be tried in, for swap tests.
 */
export const partSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2),
  parent: idSchema.optional(),
  synonyms: synonymsSchema,
  numbered: z.boolean().default(false),
  belongsTo: idSchema.optional(),
  swapsInto: idSchema.optional(),
  families: z.array(idOf("instruments")).min(1),
});
export type Part = z.infer<typeof partSchema>;
