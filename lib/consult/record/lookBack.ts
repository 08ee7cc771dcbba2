import type { Case } from "../../casebook/caseFile";
import type { SimilarCase } from "../answer";
import type { Bench } from "../bench/bench";
import { withoutCase } from "../bench/withoutCase";
import { consult } from "../consult";
import { beliefAlongPath, type PathBelief } from "./beliefAlongPath";
import { caseProblem } from "./caseProblem";

/** A case looked back on: how belief moved along its path, and which other cases are like it. */
export type LookBack = Readonly<{ belief: PathBelief; similar: readonly SimilarCase[] }>;

/** Looks back on a case as the bench would have seen it with all the other cases known, but not this one. */
export function lookBack(kase: Case, bench: Bench): LookBack {
  const problem = caseProblem(kase, bench.vocabulary);
  return withoutCase(bench, kase, () => ({
    belief: beliefAlongPath(kase, bench),
    similar: consult(problem, bench, { without: kase.id }).similar,
  }));
}
