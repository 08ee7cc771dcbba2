import type { Case } from "../../casebook/caseFile";
import { familyOf } from "../../vocabulary/familyOf";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { isFitForStudy } from "./isFitForStudy";

/**
 * The cases that can be worked through, by the family of their instrument.
 *
 * @returns families in the order in which their first case comes
 */
export function fitJobs(cases: Iterable<Case>, vocabulary: Vocabulary): Map<string, Case[]> {
  const families = new Map<string, string>();
  const byFamily = new Map<string, Case[]>();
  for (const kase of cases) {
    if (!isFitForStudy(kase)) continue;
    let family = families.get(kase.instrument);
    if (family === undefined) {
      family = familyOf(vocabulary, kase.instrument);
      families.set(kase.instrument, family);
    }
    const before = byFamily.get(family);
    if (before) before.push(kase);
    else byFamily.set(family, [kase]);
  }
  return byFamily;
}
