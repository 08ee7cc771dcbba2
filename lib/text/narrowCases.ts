import type { Case } from "../casebook/caseFile";
import { facetCodeCount, facetCodes, facetValueOf, findFacetCode } from "./facetCodes";
import { type FacetChoice, type FacetName, facetNames } from "./facets";

/** How many cases have each value of each facet, values in the order in which the cases have them first. */
export type FacetCounts = Readonly<Record<FacetName, ReadonlyMap<string, number>>>;

/** The cases that have every chosen value, in their order, and how many each further choice would leave. */
export type NarrowedCases<Item> = Readonly<{ kept: readonly Item[]; facets: FacetCounts }>;

/**
 * Narrows cases down and counts how many each further choice would leave; a facet's own choice is set aside while it is
 * counted. So a case that has every chosen value counts in all facets, one that lacks a single one counts in that facet only:
 * one pass does it all.
 *
 * @param items whatever stands for a case, in any order
 * @param caseOf the case of an item
 */
export function narrowCases<Item>(
  items: readonly Item[],
  choice: FacetChoice,
  caseOf: (item: Item) => Case,
): NarrowedCases<Item> {
  const chosen = facetNames.flatMap((facet) => {
    const value = choice[facet];
    return value === undefined ? [] : [{ facet, code: findCodeAmong(items, caseOf, facet, value) }];
  });
  const tally = startTally();
  const kept: Item[] = [];
  for (const item of items) {
    const codes = facetCodes(caseOf(item));
    let lacking = 0;
    let lacked: FacetName | undefined;
    for (const { facet, code } of chosen) {
      if (code !== undefined && codes.includes(code)) continue;
      lacking += 1;
      lacked = facet;
    }
    if (lacking > 1) continue;
    tally.add(codes, lacked);
    if (lacking === 0) kept.push(item);
  }
  return { kept, facets: tally.counts() };
}

/** A value that was never met may be one of cases that were not looked at yet: then they are, before it is taken for none. */
function findCodeAmong<Item>(
  items: readonly Item[],
  caseOf: (item: Item) => Case,
  facet: FacetName,
  value: string,
): number | undefined {
  const known = findFacetCode(facet, value);
  if (known !== undefined) return known;
  for (const item of items) facetCodes(caseOf(item));
  return findFacetCode(facet, value);
}

function startTally() {
  let counts = new Int32Array(Math.max(64, 2 * facetCodeCount()));
  const met: number[] = [];
  return {
    /** Counts all the values of a case, or those of one facet only. */
    add(codes: readonly number[], only: FacetName | undefined): void {
      for (const code of codes) {
        if (only !== undefined && facetValueOf(code)?.facet !== only) continue;
        if (code >= counts.length) {
          const wider = new Int32Array(2 * code);
          wider.set(counts);
          counts = wider;
        }
        if (counts[code] === 0) met.push(code);
        counts[code] = (counts[code] ?? 0) + 1;
      }
    },
    counts(): FacetCounts {
      const byFacet: Record<FacetName, Map<string, number>> = {
        instrument: new Map(),
        part: new Map(),
        cause: new Map(),
        outcome: new Map(),
        maker: new Map(),
        year: new Map(),
      };
      for (const code of met) {
        const known = facetValueOf(code);
        if (known) byFacet[known.facet].set(known.value, counts[code] ?? 0);
      }
      return byFacet;
    },
  };
}
