import type { Case } from "../casebook/caseFile";
import type { Bench } from "./bench/bench";
import { keyFindings } from "./keyFindings";
import { caseProblem } from "./record/caseProblem";
import { findSimilarCases, type RetrievedLike, voters } from "./similarCases";
import { understandProblem } from "./understand/understandProblem";

/** The finished cases most like a job, as the bench finds them; the case itself is none of them. */
export function likeCases(
  kase: Pick<Case, "id" | "instrument" | "complaint" | "path">,
  bench: Bench,
): RetrievedLike[] {
  const problem = caseProblem(kase, bench.vocabulary);
  const understanding = understandProblem(problem, bench.reader);
  const keyed = keyFindings(understanding.findings, bench.vocabulary);
  return findSimilarCases(bench, problem, understanding, keyed, voters, kase.id);
}
