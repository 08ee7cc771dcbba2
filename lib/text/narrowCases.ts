import type { Case } from "../casebook/caseFile";
import type { Casebook } from "../casebook/loadCasebook";
import { newestFirst } from "../casebook/newestFirst";
import { whileUnchanged } from "../casebook/whileUnchanged";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { facetCodeCount, facetValueOf, findFacetCode } from "./facetCodes";
import { eachFacet, type FacetChoice, type FacetName, facetNames } from "./facets";
import { type LaidFacets, layFacets } from "./layFacets";

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
  { caseOf, vocabulary }: Narrowing<Item>,
): NarrowedCases<Item> {
  return narrowLaid(items, choice, layFacets(items.map(caseOf), vocabulary));
}

/** The same for all cases of a casebook, the newest first: their facets are laid out once, until one is put in. */
export const narrowCasebook = (
  casebook: Casebook,
  choice: FacetChoice,
  vocabulary: Vocabulary,
): NarrowedCases<Case> => narrowLaid(newestFirst(casebook), choice, facetsOfCasebook(casebook, vocabulary));

const facetsOfCasebook = whileUnchanged(layFacets);

function narrowLaid<Item>(
  items: readonly Item[],
  choice: FacetChoice,
  { starts, codes }: LaidFacets,
): NarrowedCases<Item> {
  const chosen = facetNames.flatMap((facet) => {
    const value = choice[facet];
    return value === undefined ? [] : [{ facet, code: findFacetCode(facet, value) }];
  });
  const tally = startTally();
  if (chosen.length === 0) {
    for (const code of codes) tally.add(code);
    return { kept: items, facets: tally.counts() };
  }
  const kept: Item[] = [];
  items.forEach((item, number) => {
    const [from, end] = [starts[number] ?? 0, starts[number + 1] ?? 0];
    let lacking = 0;
    let lacked: FacetName | undefined;
    for (const { facet, code } of chosen) {
      let at = from;
      while (at < end && codes[at] !== code) at += 1;
      if (at < end) continue;
      lacking += 1;
      lacked = facet;
    }
    if (lacking > 1) return;
    for (let at = from; at < end; at += 1) {
      const code = codes[at] ?? 0;
      if (lacked === undefined || facetValueOf(code)?.facet === lacked) tally.add(code);
    }
    if (lacking === 0) kept.push(item);
  });
  return { kept, facets: tally.counts() };
}

function startTally() {
  const counts = new Int32Array(facetCodeCount());
  const met: number[] = [];
  return {
    add(code: number): void {
      if (counts[code] === 0) met.push(code);
      counts[code] = (counts[code] ?? 0) + 1;
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
