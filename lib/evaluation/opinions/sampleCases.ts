import type { Bench } from "../../consult/bench";
import { caseProblem } from "../../consult/caseProblem";
import { withoutCase } from "../../consult/withoutCase";
import { rootsOf } from "../rootsOf";
import { type OpinionSample, sampleOpinions } from "./opinionSample";

/**
 * Asks about every finished case with that case left out, twice: with its findings set down as such, and with the same
 * findings written out in the free text, by their labels.
 *
 * Source: leave-one-out cross-validation, Stone 1974.
 */
export function sampleCases(bench: Bench): OpinionSample[] {
  return [...bench.cases.values()].flatMap((kase) => {
    const [root] = rootsOf(kase);
    if (root === undefined) return [];
    const { instrument = "", says = "", evidence } = caseProblem(kase, bench.vocabulary);
    const labels = evidence.map(({ check, found }) => labelOf(bench, check, found));
    return withoutCase(bench, kase, () => [
      sampleOpinions(bench, { instrument, says, evidence }, root, kase.id),
      sampleOpinions(bench, { instrument, says: [says, ...labels].join(". ") }, root, kase.id),
    ]);
  });
}

function labelOf({ vocabulary }: Bench, check: string, outcome: string): string {
  return vocabulary.checks.get(check)?.outcomes.find(({ id }) => id === outcome)?.label ?? "";
}
