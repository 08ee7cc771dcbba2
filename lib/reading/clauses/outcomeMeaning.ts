import type { Check, Outcome } from "../../vocabulary/check";

/** What a phrase of the checks means: this outcome of this check. */
export type OutcomeMeaning = Readonly<{ check: Check; outcome: Outcome }>;

/** The name of an outcome among those of all checks. */
export const outcomeName = ({ check, outcome }: OutcomeMeaning) => `${check.id} ${outcome.id}`;
