import type { Case } from "../../casebook/caseFile";
import type { LikeJob } from "../../estimate/minutesCurve";
import type { Bench } from "../bench/bench";
import { keyFindings } from "../keyFindings";
import { caseProblem } from "../record/caseProblem";
import { findSimilarCases } from "../similarCases";
import { understandProblem } from "../understand/understandProblem";

/** As many like cases as are asked how long they took, and how much more the more alike count. Chosen: see `evaluate --casebook`. */
const most = 25;
const sharpness = 4;

/** A past case as a like job. */
export type LikeCaseJob = LikeJob & Readonly<{ case: Case }>;

/** The finished cases most like a job that tell how long they took; the case itself is none of them. */
export function likeJobs(
  kase: Pick<Case, "id" | "instrument" | "complaint" | "path">,
  bench: Bench,
): LikeCaseJob[] {
  const problem = caseProblem(kase, bench.vocabulary);
  const understanding = understandProblem(problem, bench.reader);
  if (bench.vocabulary.instruments.get(kase.instrument)?.outside) return [];
  const keyed = keyFindings(understanding.findings, bench.vocabulary);
  return findSimilarCases(bench, problem, understanding, keyed, most, kase.id).flatMap(
    ({ case: like, similarity }) =>
      like.minutes === undefined || similarity <= 0
        ? []
        : [{ case: like, minutes: like.minutes, weight: similarity ** sharpness }],
  );
}
