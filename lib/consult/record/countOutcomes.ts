import type { Case } from "../../casebook/caseFile";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { findingKey } from "../keyFindings";
import { isFinished } from "./isFinished";
import { outcomesOf } from "./outcomesOf";

/** Counts in how many finished jobs each outcome of a check was found on the troubled part, before it was mended. */
export function countOutcomes(
  cases: Iterable<Case>,
  check: string,
  vocabulary: Vocabulary,
): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const kase of cases) {
    const outcome = isFinished(kase) && outcomesOf(kase, vocabulary).get(findingKey(check, false));
    if (outcome) counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  }
  return counts;
}
