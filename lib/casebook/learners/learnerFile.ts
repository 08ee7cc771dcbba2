import { z } from "zod";
import { idSchema, minutesSchema } from "../../vocabulary/words";
import { daySchema } from "../day";

/** A name as one says it: one line, no signs that are not written. */
export const learnerNameSchema = z
  .string()
  .trim()
  .min(1)
  .max(60)
  .regex(/^[^\p{C}\p{Zl}\p{Zp}]*$/u, "a name on one line, of signs that can be seen");

/** A cause that was named, and how sure: over 0, at most 1. */
const saidSchema = z.looseObject({ cause: idSchema, sure: z.number().gt(0).max(1) });

/**
 * One past job worked through: what was said and how it compares. Nothing that follows from these (how it went, when it comes
 * again) is written down. Minutes are those of the checks by the handbook, `atStake` those reckoned for their risk.
 */
export const sessionSchema = z.looseObject({
  case: idSchema,
  day: daySchema,
  said: z.array(saidSchema).max(3),
  verdict: z.enum(["right", "among them", "missed"]),
  /** Brier's score of what was said, 0 best to 2. */
  score: z.number().min(0).max(2),
  checks: z.int().min(0).max(200),
  minutes: minutesSchema,
  atStake: minutesSchema,
  recordMinutes: minutesSchema,
  recordAtStake: minutesSchema,
  /** Checks that opened something before a safer one would have told about as much. */
  tooSoon: z.int().min(0).max(200),
  lesson: idSchema.optional(),
});
export type LearnerSession = z.infer<typeof sessionSchema>;

/** The front matter of a learner's file. Fields that it does not name are kept as they are; below it stand notes by hand. */
export const learnerFieldsSchema = z.looseObject({
  id: idSchema,
  name: learnerNameSchema,
  demo: z.boolean().default(false),
  since: daySchema,
  sessions: z.array(sessionSchema).max(5000).default([]),
});
export type LearnerFields = z.infer<typeof learnerFieldsSchema>;

/** A learner as held in memory. */
export type Learner = LearnerFields & Readonly<{ notes: string; file: string }>;
