import { uncertainEvidence } from "../../diagnosis/uncertainEvidence";
import type { Bench } from "../bench/bench";
import { findingKey } from "../keyFindings";
import type { GuessedEvidence } from "../understand/understandProblem";
import type { KeyedFinding } from "./opinionsOn";

/**
 * What evidence says of the causes of which nobody can be sure what it means: through all the findings that it may be, each
 * for its share. What is taken to be a finding that another one outdoes is left out.
 *
 * @returns logarithms by the order of the model's causes
 */
export function guessedEvidence(
  { model }: Bench,
  guessed: readonly GuessedEvidence[],
  keyed: ReadonlyMap<string, KeyedFinding>,
): Float64Array {
  const keyOf = new Map([...keyed].map(([key, finding]) => [finding, key]));
  const sum = new Float64Array(model.causes.length);
  for (const { finding, mayMean } of guessed) {
    const taken = finding && keyOf.get(finding);
    if (finding && taken === undefined) continue;
    const findings = mayMean.flatMap(({ meaning: { check, outcome }, share }) => {
      const key = check.id === finding?.check && taken ? taken : findingKey(check.id, false);
      const likelihoods = model.likelihoods(key, outcome.id);
      return likelihoods ? [{ likelihoods, share }] : [];
    });
    for (const [row, log] of uncertainEvidence(findings, sum.length).entries())
      sum[row] = (sum[row] ?? 0) + log;
  }
  return sum;
}
