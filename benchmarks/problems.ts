import type { Case } from "@/lib/casebook/caseFile";
import { formatPartRef } from "@/lib/casebook/partRef";
import { type Problem, problemSchema } from "@/lib/consult/problem";
import { caseFindings } from "@/lib/consult/record/caseFindings";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** How many findings a technician has set down when asking. Chosen. */
const mostEvidence = 6;

/**
 * Turns cases into problems as they come to the bench: by turns the player's words alone, findings alone, and both.
 *
 * @param cases of which the casebook holds none, so that no answer is copied off
 */
export function problemsOf(cases: readonly Case[], vocabulary: Vocabulary): Problem[] {
  return cases.map((kase, at) => {
    const evidence = caseFindings(kase, vocabulary)
      .slice(0, 1 + (at % mostEvidence))
      .map(({ check, outcome, part }) => ({
        check,
        found: outcome,
        ...(part ? { part: formatPartRef(part) } : {}),
      }));
    const instrument = vocabulary.instruments.get(kase.instrument)?.label;
    const turn = at % 3;
    return problemSchema.parse({
      instrument,
      ...(turn !== 1 || evidence.length === 0 ? { says: kase.complaint } : {}),
      ...(turn !== 0 ? { evidence } : {}),
    });
  });
}
