import { appliesTo } from "../../vocabulary/appliesTo";
import type { Cause } from "../../vocabulary/cause";
import type { Frequency } from "../../vocabulary/words";
import type { Bench } from "../bench/bench";
import { findingKey } from "../keyFindings";

/** One outcome that the handbook tells of: how often it is met with the cause, and what finding it would say. */
export type TellTale = Readonly<{
  outcome: string;
  often: Frequency;
  /** Weight of evidence for the cause against its family's other causes, decibans; below 0 it speaks against. */
  decibans: number;
}>;

/** What one check tells of a cause; `others` where it is made on the siblings of the troubled part. */
export type CheckTells = Readonly<{ check: string; others: boolean; tells: readonly TellTale[] }>;

/**
 * Lists what each check tells of a cause, both ways: 10 log10 P(outcome | cause) / P(outcome | another cause), the others
 * by how often they are met, cases included.
 *
 * @returns the checks that tell the most first, ties by id; the outcomes of a check from what speaks most for the cause
 * Source: Good 1950, Probability and the Weighing of Evidence.
 */
export function tellTales(
  cause: Cause,
  { model, vocabulary }: Pick<Bench, "model" | "vocabulary">,
): CheckTells[] {
  const row = model.causes.indexOf(cause.id);
  const rivals = model.causes.flatMap((id, at) => {
    const families = vocabulary.causes.get(id)?.families ?? [];
    return at !== row && cause.families.some((family) => appliesTo(vocabulary, families, family)) ? [at] : [];
  });
  const weigh = (key: string, outcome: string) => {
    const likelihoods = model.likelihoods(key, outcome);
    const jobs = rivals.reduce((sum, at) => sum + model.jobsOf(at), 0);
    if (!likelihoods || row < 0 || jobs === 0) return 0;
    const elsewhere = rivals.reduce((sum, at) => sum + model.jobsOf(at) * (likelihoods[at] ?? 0), 0) / jobs;
    return 10 * Math.log10((likelihoods[row] ?? 1) / elsewhere);
  };
  const told = [[cause.findings, false] as const, [cause.others, true] as const].flatMap(
    ([findings, others]) =>
      Object.entries(findings).map(([check, words]) => ({
        check,
        others,
        tells: Object.entries(words)
          .map(([outcome, often]) => ({
            outcome,
            often,
            decibans: weigh(findingKey(check, others), outcome),
          }))
          .sort((a, b) => b.decibans - a.decibans),
      })),
  );
  const strength = ({ tells }: CheckTells) => Math.max(...tells.map(({ decibans }) => Math.abs(decibans)));
  return told.sort((a, b) => strength(b) - strength(a) || (a.check < b.check ? -1 : 1));
}
