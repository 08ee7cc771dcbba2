import { z } from "zod";
import { idOf } from "./words";

/**
 * Whole notes on one job each, as they are written at the bench when this cause is behind it: the complaint, and what was looked at,
 * tried and measured. They tell of the evidence, and seldom of the cause by its name.
 */
export const causeNotesSchema = z.strictObject({
  cause: idOf("causes"),
  notes: z.array(z.string().trim().min(20).max(600)).min(1),
});
export type CauseNotes = z.infer<typeof causeNotesSchema>;
