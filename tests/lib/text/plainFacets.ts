import type { Case } from "@/lib/casebook/caseFile";
import { type FacetChoice, type FacetName, facetNames, facetValues } from "@/lib/text/facets";

import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

/** The plain way to tell whether a case has every chosen value, but for one facet that is set aside. */
export const plainMatches = (kase: Case, choice: FacetChoice, except?: FacetName) =>
  facetNames.every(
    (name) =>
      name === except ||
      choice[name] === undefined ||
      facetValues(kase, smallVocabulary)[name].includes(choice[name]),
  );

/** The plain way to count: every facet by itself, each case asked anew; entries in the order in which they are met. */
export const plainCounts = (cases: readonly Case[], choice: FacetChoice) =>
  facetNames.map((name) => {
    const counts = new Map<string, number>();
    for (const kase of cases) {
      if (!plainMatches(kase, choice, name)) continue;
      for (const value of facetValues(kase, smallVocabulary)[name])
        counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    return [name, [...counts]] as const;
  });
