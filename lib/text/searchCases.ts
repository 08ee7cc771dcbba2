import type { Case } from "../casebook/caseFile";
import type { Casebook } from "../casebook/loadCasebook";
import { type ExcerptRun, excerpt } from "./excerpt";
import type { FacetChoice } from "./facets";
import { type FacetCounts, narrowCasebook, narrowCases } from "./narrowCases";
import { searchText } from "./searchText";
import type { TextIndex } from "./textIndex";

/** One case found, with its title and the stretch of its text that holds the words. */
export type FoundCase = Readonly<{
  case: Case;
  title: readonly ExcerptRun[];
  excerpt: readonly ExcerptRun[];
}>;
export type FoundCases = Readonly<{
  found: readonly FoundCase[];
  total: number;
  facets: FacetCounts;
}>;

/** What is asked of the casebook: words, chosen facets, and how many cases to lay out in full (50); `total` counts them all. */
export type SearchQuery = Readonly<{ words: string; choice: FacetChoice; most?: number }>;

/**
 * Searches and narrows the casebook. Without words every case comes, the newest first.
 */
export function searchCases(
  casebook: Casebook,
  index: TextIndex,
  { words, choice, most = 50 }: SearchQuery,
): FoundCases {
  const { vocabulary } = index.search;
  if (words.trim() === "") {
    const { kept, facets } = narrowCasebook(casebook, choice, vocabulary);
    return { total: kept.length, facets, found: kept.slice(0, most).map((kase) => layOut(kase, [])) };
  }
  const hits = findHits(casebook, index, words);
  const { kept, facets } = narrowCases(hits, choice, { caseOf: (hit) => hit.case, vocabulary });
  return {
    total: kept.length,
    facets,
    found: kept.slice(0, most).map(({ case: kase, terms }) => layOut(kase, terms)),
  };
}

const layOut = (kase: Case, terms: readonly string[]): FoundCase => ({
  case: kase,
  title: excerpt(kase.title, terms, 200),
  excerpt: excerpt([kase.complaint, kase.story].join(" "), terms),
});

type Hit = Readonly<{ case: Case; terms: readonly string[] }>;

function findHits({ cases }: Casebook, index: TextIndex, words: string): Hit[] {
  const hits: Hit[] = [];
  for (const { id, terms } of searchText(index, words)) {
    const kase = cases.get(id);
    if (kase) hits.push({ case: kase, terms });
  }
  return hits;
}
