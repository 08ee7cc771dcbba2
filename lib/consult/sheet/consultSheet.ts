import type { Case } from "../../casebook/caseFile";
import { formatPartRef } from "../../casebook/partRef";
import type { Answer } from "../answer";
import type { Bench } from "../bench";
import { caseFindings } from "../caseFindings";
import { consult } from "../consult";
import { problemSchema } from "../problem";

/** As much evidence as a problem may bring. */
const mostEvidence = 200;

/** Asks the bench about a job in hand: its complaint and all that its path has found by now. */
export function consultSheet(
  kase: Pick<Case, "id" | "instrument" | "complaint" | "path">,
  bench: Bench,
): Answer {
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
  return consult(problem, bench, { without: kase.id });
}
