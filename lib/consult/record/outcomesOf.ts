import type { Case } from "../../casebook/caseFile";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { caseOutcomes } from "../bench/caseAttributes";

const remembered = new WeakMap<Case, ReadonlyMap<string, string>>();

/**
 * A case's findings, key to outcome, remembered with the case: it never changes once read, a changed file is another case,
 * and so are all when the vocabulary changes.
 */
export function outcomesOf(kase: Case, vocabulary: Vocabulary): ReadonlyMap<string, string> {
  const known = remembered.get(kase);
  if (known !== undefined) return known;
  const outcomes = new Map(Object.entries(caseOutcomes(kase, vocabulary)));
  remembered.set(kase, outcomes);
  return outcomes;
}
