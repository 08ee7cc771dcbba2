import type { Case } from "../casebook/caseFile";
import { formatPartRef } from "../casebook/partRef";
import type { SimilarCase } from "./answer";
import { beliefAlongPath, type PathBelief } from "./beliefAlongPath";
import type { Bench } from "./bench";
import { caseFindings } from "./caseFindings";
import { consult } from "./consult";
import { problemSchema } from "./problem";
import { withoutCase } from "./withoutCase";

/** A case looked back on: how belief moved along its path, and which other cases are like it. */
export type LookBack = Readonly<{ belief: PathBelief; similar: readonly SimilarCase[] }>;

/** Looks back on a case as the bench would have seen it with all the other cases known, but not this one. */
export function lookBack(kase: Case, bench: Bench): LookBack {
  const problem = problemSchema.parse({
    instrument: kase.instrument,
    says: kase.complaint,
    evidence: caseFindings(kase, bench.vocabulary)
      .slice(0, mostEvidence)
      .map(({ check, outcome, part }) => ({
        check,
        found: outcome,
        ...(part ? { part: formatPartRef(part) } : {}),
      })),
  });
  return withoutCase(bench, kase, () => ({
    belief: beliefAlongPath(kase, bench),
    similar: consult(problem, bench, { without: kase.id }).similar,
  }));
}

/** As much evidence as a problem may bring. */
const mostEvidence = 200;
