/** What was thought likely before the truth was told: one probability a class, adding up to 1, and the class it turned out to be. */
export type Forecast = Readonly<{ probabilities: Float64Array; truth: number }>;

/** The likeliest class, the first where several are as likely. */
export function firstChoice(probabilities: Float64Array): number {
  let best = 0;
  for (let at = 1; at < probabilities.length; at++) {
    if ((probabilities[at] ?? 0) > (probabilities[best] ?? 0)) best = at;
  }
  return best;
}

/**
 * The place of the truth among the classes by falling probability, from 1; of classes as likely the one listed first comes
 * first, as in `firstChoice`.
 */
export function rankOfTruth({ probabilities, truth }: Forecast): number {
  const own = probabilities[truth] ?? 0;
  let rank = 1;
  for (const [at, probability] of probabilities.entries()) {
    if (probability > own || (probability === own && at < truth)) rank += 1;
  }
  return rank;
}
