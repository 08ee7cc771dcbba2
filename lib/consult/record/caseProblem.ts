import type { Case } from "../../casebook/caseFile";
import { formatPartRef } from "../../casebook/partRef";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { type Problem, problemSchema } from "../problem";
import { caseFindings } from "./caseFindings";

/** As much evidence as a problem may bring. */
const mostEvidence = 200;

/** A case as it stood on the bench: what the player said, and what was found before the cure. */
export function caseProblem(
  kase: Pick<Case, "instrument" | "complaint" | "path">,
  vocabulary: Vocabulary,
): Problem {
  return problemSchema.parse({
    instrument: kase.instrument,
    says: kase.complaint,
    evidence: caseFindings(kase, vocabulary)
      .slice(0, mostEvidence)
      .map(({ check, outcome, part }) => ({
        check,
        found: outcome,
        ...(part ? { part: formatPartRef(part) } : {}),
      })),
  });
}
