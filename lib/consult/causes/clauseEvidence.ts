import { uncertainEvidence } from "../../diagnosis/uncertainEvidence";
import { tellOutcomes } from "../../reading/clauses/tellOutcomes";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Bench } from "../bench/bench";
import { findingKey } from "../keyFindings";

/**
 * What the clauses of a text say of the causes through the findings that they may tell of.
 *
 * @param instrument instrument id that bounds which checks make sense; undefined where it is not known
 * @returns logarithms by the order of the model's causes
 */
export function clauseEvidence(
  { vocabulary, reader, model }: Bench,
  text: string,
  instrument: string | undefined,
): Float64Array {
  const sum = new Float64Array(model.causes.length);
  const admits = new Set(
    [...vocabulary.checks.values()].filter(({ families }) => appliesTo(vocabulary, families, instrument)),
  );
  for (const { others, outcomes } of tellOutcomes(text, reader, ({ check }) => admits.has(check))) {
    const findings = outcomes.flatMap(({ meaning: { check, outcome }, share }) => {
      const likelihoods = model.likelihoods(findingKey(check.id, others), outcome.id);
      return likelihoods ? [{ likelihoods, share }] : [];
    });
    const logs = uncertainEvidence(findings, sum.length);
    for (let row = 0; row < sum.length; row += 1) sum[row] = (sum[row] ?? 0) + (logs[row] ?? 0);
  }
  return sum;
}
