import { z } from "zod";
import { idSchema, synonymsSchema } from "./words";

/**
 * An instrument, or a family of them: one node of the instrument taxonomy.
 * `places` says how many of a numbered part it has (`valve: 3`), inherited from the parent where absent.
 * `outside` marks what people bring in that this handbook does not cover (a violin, an amplifier).
 */
export const instrumentSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2),
  parent: idSchema.optional(),
  synonyms: synonymsSchema,
  places: z.record(idSchema, z.int().min(1).max(12)).default({}),
  outside: z.boolean().default(false),
});
export type Instrument = z.infer<typeof instrumentSchema>;
