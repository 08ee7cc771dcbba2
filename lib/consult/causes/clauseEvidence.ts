import { uncertainEvidence } from "../../diagnosis/uncertainEvidence";
import type { ToldClause } from "../../reading/clauses/tellClauses";
import type { Bench } from "../bench/bench";
import { findingKey } from "../keyFindings";

/**
 * What the clauses of a text say of the causes through the findings that they may tell of.
 *
 * @returns logarithms by the order of the model's causes
 */
export function clauseEvidence({ model }: Bench, clauses: readonly ToldClause[]): Float64Array {
  const sum = new Float64Array(model.causes.length);
  for (const { others, outcomes } of clauses) {
    const findings = outcomes.flatMap(({ meaning: { check, outcome }, share }) => {
      const likelihoods = model.likelihoods(findingKey(check.id, others), outcome.id);
      return likelihoods ? [{ likelihoods, share }] : [];
    });
    const logs = uncertainEvidence(findings, sum.length);
    for (let row = 0; row < sum.length; row += 1) sum[row] = (sum[row] ?? 0) + (logs[row] ?? 0);
  }
  return sum;
}
