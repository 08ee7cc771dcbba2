import { z } from "zod";

const weightSchema = z.number().min(0).max(20);

/**
 * What speaks for it that a clause tells of an outcome, each as it counts, and what speaks for it that it tells of none that is
 * known. Learned from the vocabulary's sayings by `npm run -s evaluate -- --reading`.
 */
export const readingWeightsSchema = z.strictObject({
  /** The clause's words, each by itself: how much likelier they are with the outcome than in general. */
  words: weightSchema.default(0.2),
  /** How close the clause is to what was ever told of the outcome. */
  near: weightSchema.default(1.1),
  /** As `words`, of the whole sentence. */
  wordsAround: weightSchema.default(0.1),
  /** That a phrase of the outcome stands there, or one of another outcome that is denied. */
  phrase: weightSchema.default(1.5),
  /** That the check bears on the part that is named in the clause, or, where none is, on the one named before. */
  part: weightSchema.default(0.6),
  partBefore: weightSchema.default(0.9),
  /** For no known outcome: in any case, and for the share of terms that nothing was ever told with. */
  nothing: weightSchema.default(3.5),
  nothingStrange: weightSchema.default(1),
});
export type ReadingWeights = z.infer<typeof readingWeightsSchema>;
