import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { isFinished } from "./isFinished";
import { outcomesOf } from "./outcomesOf";

/** How often each outcome was found, by the finding's key; a case counts once a key. */
export type SeenOutcomes = ReadonlyMap<string, ReadonlyMap<string, number>>;

/**
 * Counts what was found in finished jobs, by their root causes.
 *
 * @param cases in any order; those still open do not count
 * @returns root cause -> finding key -> outcome -> in how many jobs
 */
export function seenFindings(
  cases: Iterable<Case>,
  vocabulary: Vocabulary,
): ReadonlyMap<string, SeenOutcomes> {
  const seen = new Map<string, Map<string, Map<string, number>>>();
  for (const kase of cases) {
    if (!isFinished(kase)) continue;
    for (const root of rootCauses(kase)) {
      const keys = seen.get(root) ?? new Map<string, Map<string, number>>();
      seen.set(root, keys);
      for (const [key, outcome] of outcomesOf(kase, vocabulary)) {
        const outcomes = keys.get(key) ?? new Map<string, number>();
        keys.set(key, outcomes);
        outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
      }
    }
  }
  return seen;
}
