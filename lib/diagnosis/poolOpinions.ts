import { normaliseLogs, type Posterior } from "./posterior";

/** Weight of the like cases' opinion beside the findings' own, which count in full. Chosen: see `evaluate --casebook`. */
const weightOfCases = 0.25;
/** Weight of a full likeness of words between the problem and a cause's entry, in natural logarithm. Chosen likewise. */
const weightOfWords = 2.5;

/**
 * Joins what the findings say with what the like cases and the words say: a log-linear pool.
 * log P(c) = log P_findings(c) + b log P_cases(c) + w likeness(c) + constant; none of these keeps its standing with the
 * findings.
 *
 * @param findings opinion by the findings
 * @param cases opinion by the like cases, in the same order of causes
 * @param words likeness of the words that no finding took up to each cause's entry, 0..1; default none
 * @returns probabilities adding up to 1; a cause that the findings hold impossible stays at 0
 * Source: logarithmic opinion pool, Genest & Zidek 1986.
 */
export function poolOpinions(
  findings: Posterior,
  cases: Float64Array,
  words: Float64Array = new Float64Array(cases.length),
): Posterior {
  const logs = findings.causes.map((probability, row) =>
    probability === 0
      ? Number.NEGATIVE_INFINITY
      : Math.log(probability) +
        weightOfCases * Math.log(Math.max(cases[row] ?? 0, 1e-6)) +
        weightOfWords * (words[row] ?? 0),
  );
  const mean = findings.causes.reduce(
    (sum, p, row) => sum + p * Math.log(Math.max(cases[row] ?? 0, 1e-6)),
    0,
  );
  const held = 1 - findings.noneFits;
  const typical = held > 0 ? mean / held : 0;
  return normaliseLogs(logs, Math.log(Math.max(findings.noneFits, 1e-12)) + weightOfCases * typical);
}
