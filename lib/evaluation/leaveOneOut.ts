import { rootCauses } from "../casebook/rootCauses";
import type { Answer } from "../consult/answer";
import type { Bench } from "../consult/bench/bench";
import { withoutCase } from "../consult/bench/withoutCase";
import { consult } from "../consult/consult";
import { caseProblem } from "../consult/record/caseProblem";

/** How one case fared when it was asked about as if it had never happened. */
export type Asked = Readonly<{
  case: string;
  instrument: string;
  root: string;
  rank: number;
  probability: number;
  first: string;
}>;

/**
 * Asks about every finished case with that case left out of the model, the vote and the text search, and notes at which
 * rank its root cause came.
 *
 * @returns one entry a case with a root cause, in the casebook's order; rank from 1, Infinity where it is not listed
 * Source: leave-one-out cross-validation, Stone 1974.
 */
export function leaveOneOut(bench: Bench): Asked[] {
  return [...bench.cases.values()].flatMap((kase) => {
    const roots = rootCauses(kase);
    const [root] = roots;
    if (root === undefined) return [];
    const problem = caseProblem(kase, bench.vocabulary);
    const answer = withoutCase(bench, kase, () => consult(problem, bench, { without: kase.id }));
    return [{ case: kase.id, instrument: kase.instrument, root, ...standing(answer, roots) }];
  });
}

function standing({ causes }: Answer, roots: readonly string[]) {
  const at = causes.findIndex(({ id }) => roots.includes(id));
  return {
    rank: at < 0 ? Number.POSITIVE_INFINITY : at + 1,
    probability: causes[at]?.probability ?? 0,
    first: causes[0]?.id ?? "",
  };
}
