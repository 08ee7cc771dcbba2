import type { PartRef } from "../casebook/partRef";
import type { Check, Outcome } from "../vocabulary/check";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Finding } from "./finding";

/**
 * The finding that a reading answers: the first outcome that holds of the check that takes such readings.
 *
 * @returns one finding, or none where no check takes them or no outcome holds
 */
export function answeringOutcome(
  { checks }: Vocabulary,
  reads: NonNullable<Check["reads"]>,
  holds: (outcome: Outcome) => boolean,
  part: PartRef,
): Finding[] {
  const check = [...checks.values()].find((candidate) => candidate.reads === reads);
  const outcome = check?.outcomes.find(holds);
  return check && outcome ? [{ check: check.id, outcome: outcome.id, part }] : [];
}
