import { z } from "zod";

const weightSchema = z.number().min(0).max(10);

/**
 * What each source counts for when causes are weighed: 1 takes it at its word, less tempers it. All but the prior and the like cases are learned
 * from handbook, casebook and problems written apart from them by `npm run -s evaluate -- --opinions`.
 */
export const opinionWeightsSchema = z.strictObject({
  /** How common the causes are. */
  prior: weightSchema.default(1),
  /** Findings that were set down as such: tapped, measured, named by their ids or all in a phrase. */
  setDown: weightSchema.default(1),
  /** What evidence in words may mean, each finding for its share. */
  readFromEvidence: weightSchema.default(0.7),
  /** Findings that were read from free text. */
  readFromText: weightSchema.default(0.3),
  /** Findings that the clauses of the free text may tell of, by their words alone. */
  clauses: weightSchema.default(0.5),
  /** The causes of like cases. */
  likeCases: weightSchema.default(0.1),
  /** The words of the whole problem, as they go with what was ever told of a cause. */
  words: weightSchema.default(1),
  /** The same of the pairs of words that stand side by side. */
  pairs: weightSchema.default(1),
});
export type OpinionWeights = z.infer<typeof opinionWeightsSchema>;
