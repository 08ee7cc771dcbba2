import type { Bench } from "../../consult/bench/bench";
import type { BenchNote } from "../notesReport";
import { type OpinionSample, sampleOpinions } from "./opinionSample";

/**
 * Asks about problems of which somebody else told the cause. Of two causes that are both right the first counts; a cause that
 * is not possible on the instrument teaches nothing.
 */
export function sampleProblems(bench: Bench, problems: readonly BenchNote[]): OpinionSample[] {
  return problems.flatMap(({ means: [cause], toldCause: _, ...problem }) => {
    if (cause === undefined) return [];
    const sample = sampleOpinions(bench, problem, cause);
    return sample.opinions.possible(cause) ? [sample] : [];
  });
}
