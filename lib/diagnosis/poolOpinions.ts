import { normaliseLogs, type Posterior } from "./posterior";

/**
 * Weights of the three opinions. What was found counts a little less than in full, for findings go together and would be
 * counted twice; so do the words, much more. Chosen: see `evaluate --casebook`.
 */
const weights = { findings: 0.8, cases: 0.15, words: 0.35 } as const;

/**
 * Joins what the findings say with what the like cases and the words say: a log-linear pool.
 * log P(c) = a log P_findings(c) + b log P_cases(c) + w log P(words | c) + constant; "none of these" is held to be told by
 * cases and words as the causes are on the whole.
 *
 * @param findings opinion by the findings
 * @param cases opinion by the like cases, in the same order of causes
 * @param words log-likelihood of the words by each cause; default none
 * @returns probabilities adding up to 1; a cause that the findings hold impossible stays at 0
 * Source: logarithmic opinion pool, Genest & Zidek 1986.
 */
export function poolOpinions(
  findings: Posterior,
  cases: Float64Array,
  words: Float64Array = new Float64Array(cases.length),
): Posterior {
  const aside = cases.map(
    (probability, row) =>
      weights.cases * Math.log(Math.max(probability, 1e-6)) + weights.words * (words[row] ?? 0),
  );
  const logs = findings.causes.map((probability, row) =>
    probability === 0
      ? Number.NEGATIVE_INFINITY
      : weights.findings * Math.log(probability) + (aside[row] ?? 0),
  );
  const held = 1 - findings.noneFits;
  const mean = findings.causes.reduce((sum, p, row) => sum + p * (aside[row] ?? 0), 0);
  const typical = held > 0 ? mean / held : 0;
  return normaliseLogs(logs, weights.findings * Math.log(Math.max(findings.noneFits, 1e-12)) + typical);
}
