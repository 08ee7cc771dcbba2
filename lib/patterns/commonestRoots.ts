import type { Case } from "../casebook/caseFile";
import { facetCodes, facetValueOf } from "../text/facetCodes";
import type { FacetName } from "../text/facets";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { type ParetoRow, paretoRows } from "./paretoRows";

/**
 * Lists the root causes that go with each value of a facet: what a maker's instruments come in for, what is at the bottom of
 * trouble with a part.
 *
 * @param most root causes a value, the commonest first
 * @returns facet value -> its commonest root causes; `running` is their share of all root causes met with the value
 */
export function commonestRoots(
  cases: readonly Case[],
  facet: FacetName,
  { vocabulary, most }: Readonly<{ vocabulary: Vocabulary; most: number }>,
): ReadonlyMap<string, readonly ParetoRow[]> {
  const counts = new Map<string, Map<string, number>>();
  for (const kase of cases) {
    const codes = facetCodes(kase, vocabulary);
    for (const code of codes) {
      const own = facetValueOf(code);
      if (own?.facet !== facet) continue;
      const roots = counts.get(own.value) ?? new Map<string, number>();
      counts.set(own.value, roots);
      for (const other of codes) {
        const met = facetValueOf(other);
        if (met?.facet === "root") roots.set(met.value, (roots.get(met.value) ?? 0) + 1);
      }
    }
  }
  return new Map([...counts].map(([value, roots]) => [value, paretoRows(roots).slice(0, most)]));
}
