import { z } from "zod";
import { frequencySchema, idOf, idSchema, proseSchema, sourceSchema, synonymsSchema } from "./words";

/** Check id -> outcome id -> how often that is found when this cause is at work. */
const tellTalesSchema = z.record(idSchema, z.record(idSchema, frequencySchema));

const commonnessSchema = z.enum(["very common", "common", "uncommon", "rare"]);

/**
 * Why an instrument does not work.
 * `findings` are on the troubled part, `others` the same checks on its siblings (the other valves, the other leg).
 */
export const causeSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2).max(60),
  synonyms: synonymsSchema,
  /** The group that the cause belongs to, for borrowing strength and for leafing: dirt, dents, wear ... */
  group: idSchema,
  families: z.array(idOf("instruments")).min(1),
  parts: z.array(idOf("parts")).min(1),
  howCommon: commonnessSchema,
  comesAbout: proseSchema,
  prove: proseSchema,
  findings: tellTalesSchema,
  others: tellTalesSchema.default({}),
  mistakenFor: z.array(idOf("causes")).default([]),
  repairs: z.array(idOf("repairs")).default([]),
  source: sourceSchema,
});
export type Cause = z.infer<typeof causeSchema>;
