import type { Case } from "./caseFile";
import type { Casebook } from "./loadCasebook";
import { reorderNewest } from "./newestFirst";

/**
 * Puts a case into the casebook, new or in place of its earlier version, in time that hardly grows with the casebook: the map
 * of cases is written to and not copied, so whoever holds the casebook sees the case from now on. A version keeps the place
 * of the one before it, so that a loop over the cases that is under way meets neither twice.
 */
export function putCase(casebook: Casebook, kase: Case): void {
  const before = casebook.cases.get(kase.id);
  casebook.cases.set(kase.id, kase);
  reorderNewest(casebook, kase, before);
}
