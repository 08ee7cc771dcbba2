import { z } from "zod";
import { frequencySchema, idOf, idSchema } from "./words";

/** One frequency word of the handbook in place of another: how often a check finds an outcome when a cause is at work. */
export const wordChangeSchema = z.strictObject({
  cause: idOf("causes"),
  /** Whether the check is made on the siblings of the troubled part. */
  others: z.boolean().default(false),
  check: idOf("checks"),
  outcome: idSchema,
  /** The word that stands there. */
  word: frequencySchema,
  /** The word that the cases speak for. */
  proposed: frequencySchema,
});
export type WordChange = z.infer<typeof wordChangeSchema>;

/** Whether two changes are about the same word in the same place. */
export const isSameChange = (a: WordChange, b: WordChange) =>
  a.cause === b.cause &&
  a.others === b.others &&
  a.check === b.check &&
  a.outcome === b.outcome &&
  a.word === b.word &&
  a.proposed === b.proposed;
