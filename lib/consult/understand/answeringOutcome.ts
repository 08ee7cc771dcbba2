import type { PartRef } from "../../casebook/partRef";
import type { Check, Outcome } from "../../vocabulary/check";
import { checkThatReads } from "../../vocabulary/checkThatReads";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Finding } from "../finding";

/**
 * The finding that a reading answers: the first outcome that holds of the check that takes such readings.
 *
 * @returns one finding, or none where no check takes them or no outcome holds
 */
export function answeringOutcome(
  vocabulary: Vocabulary,
  reads: NonNullable<Check["reads"]>,
  holds: (outcome: Outcome) => boolean,
  part: PartRef,
): Finding[] {
  const check = checkThatReads(vocabulary, reads);
  const outcome = check?.outcomes.find(holds);
  return check && outcome ? [{ check: check.id, outcome: outcome.id, part }] : [];
}
