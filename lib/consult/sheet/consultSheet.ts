import type { Case } from "../../casebook/caseFile";
import type { Answer } from "../answer";
import type { Bench } from "../bench/bench";
import { consult } from "../consult";
import { caseProblem } from "../record/caseProblem";

/** Asks the bench about a job in hand: its complaint and all that its path has found by now. */
export function consultSheet(
  kase: Pick<Case, "id" | "instrument" | "complaint" | "path">,
  bench: Bench,
): Answer {
  return consult(caseProblem(kase, bench.vocabulary), bench, { without: kase.id });
}
