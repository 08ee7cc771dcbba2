import type { Case } from "../casebook/caseFile";
import { formatPartRef } from "../casebook/partRef";
import type { Bench } from "../consult/bench";
import { caseFindings } from "../consult/caseFindings";
import { type Problem, problemSchema } from "../consult/problem";

/** A past case as it stood on the bench: its findings before the cure, and what the player said. */
export function problemOf(kase: Case, bench: Bench): Problem {
  return problemSchema.parse({
    instrument: kase.instrument,
    says: kase.complaint,
    evidence: caseFindings(kase, bench.vocabulary).map(({ check, outcome, part }) => ({
      check,
      found: outcome,
      ...(part ? { part: formatPartRef(part) } : {}),
    })),
  });
}
