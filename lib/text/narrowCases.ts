import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { facetCodeCount, facetCodes, facetValueOf, findFacetCode } from "./facetCodes";
import { eachFacet, type FacetChoice, type FacetName, facetNames } from "./facets";

/** How many cases have each value of each facet, values in the order in which the cases have them first. */
export type FacetCounts = Readonly<Record<FacetName, ReadonlyMap<string, number>>>;

/** The cases that have every chosen value, in their order, and how many each further choice would leave. */
export type NarrowedCases<Item> = Readonly<{ kept: readonly Item[]; facets: FacetCounts }>;

/** How the case of an item is come by, and the vocabulary that tells its family. */
export type Narrowing<Item> = Readonly<{ caseOf: (item: Item) => Case; vocabulary: Vocabulary }>;

/**
 * Narrows cases down and counts how many each further choice would leave; a facet's own choice is set aside while it is
 * counted. So a case that has every chosen value counts in all facets, one that lacks a single one counts in that facet only:
 * one pass does it all.
 *
 * @param items whatever stands for a case, in any order
 * @param way the case of an item, and the vocabulary that the cases were read with
 */
export function narrowCases<Item>(
  items: readonly Item[],
  choice: FacetChoice,
  way: Narrowing<Item>,
): NarrowedCases<Item> {
  const codesOf = (item: Item) => facetCodes(way.caseOf(item), way.vocabulary);
  const chosen = facetNames.flatMap((facet) => {
    const value = choice[facet];
    return value === undefined ? [] : [{ facet, code: findCodeAmong(items, codesOf, facet, value) }];
  });
  const tally = startTally();
  const kept: Item[] = [];
  for (const item of items) {
    const codes = codesOf(item);
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
  codesOf: (item: Item) => readonly number[],
  facet: FacetName,
  value: string,
): number | undefined {
  const known = findFacetCode(facet, value);
  if (known !== undefined) return known;
  for (const item of items) codesOf(item);
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
      const byFacet = eachFacet(() => new Map<string, number>());
      for (const code of met) {
        const known = facetValueOf(code);
        if (known) byFacet[known.facet].set(known.value, counts[code] ?? 0);
      }
      return byFacet;
    },
  };
}
