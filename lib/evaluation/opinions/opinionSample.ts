import type { Bench } from "../../consult/bench/bench";
import { type Opinions, opinionsOn } from "../../consult/causes/opinionsOn";
import { keyFindings } from "../../consult/keyFindings";
import { type ProblemInput, problemSchema } from "../../consult/problem";
import { findSimilarCases, voters } from "../../consult/similarCases";
import { understandProblem } from "../../consult/understand/understandProblem";

/** What every source said of a problem whose cause is known. */
export type OpinionSample = Readonly<{ opinions: Opinions; cause: string }>;

/**
 * Asks every source about a problem.
 *
 * @param cause what was behind it
 * @param without a case that must not count as like it: the one that the problem was taken from
 */
export function sampleOpinions(
  bench: Bench,
  asked: ProblemInput,
  cause: string,
  without?: string,
): OpinionSample {
  const problem = problemSchema.parse(asked);
  const understanding = understandProblem(problem, bench.reader);
  const keyed = keyFindings(understanding.findings, bench.vocabulary);
  const retrieved = findSimilarCases(bench, problem, understanding, keyed, voters, without);
  return { opinions: opinionsOn(bench, problem, understanding, keyed, retrieved), cause };
}
