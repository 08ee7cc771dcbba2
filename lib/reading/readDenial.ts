import type { Check, Outcome } from "../vocabulary/check";

/**
 * Says what it means when an outcome is said not to be so: what its `denied` field says; else the check's normal
 * outcome; for the normal outcome of a check with two outcomes the other one.
 *
 * @returns an outcome id, or undefined where the denial leaves several outcomes open
 */
export function readDenial(check: Check, outcome: Outcome): string | undefined {
  if (outcome.denied !== undefined) return outcome.denied;
  if (check.normal !== undefined && outcome.id !== check.normal) return check.normal;
  const others = check.outcomes.filter(({ id }) => id !== outcome.id);
  return others.length === 1 ? others[0]?.id : undefined;
}
