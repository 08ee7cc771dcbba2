import type { Case } from "../casebook/caseFile";
import type { Casebook } from "../casebook/loadCasebook";
import { type ExcerptRun, excerpt } from "./excerpt";
import { countFacets, type FacetChoice, type FacetName, matchesFacets } from "./facets";
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
  facets: Record<FacetName, ReadonlyMap<string, number>>;
}>;

/**
 * Searches and narrows the casebook. Without words every case comes, the newest first.
 *
 * @param most how many cases to lay out in full; `total` counts them all
 */
export function searchCases(
  casebook: Casebook,
  index: TextIndex,
  { words, choice, most = 50 }: Readonly<{ words: string; choice: FacetChoice; most?: number }>,
): FoundCases {
  const asked = words.trim() !== "";
  const hits = asked
    ? searchText(index, words).flatMap(({ id, terms }) => {
        const kase = casebook.cases.get(id);
        return kase ? [{ case: kase, terms }] : [];
      })
    : [...casebook.cases.values()].sort(newestFirst).map((kase) => ({ case: kase, terms: [] }));
  const kept = hits.filter((hit) => matchesFacets(hit.case, choice));
  return {
    total: kept.length,
    facets: countFacets(
      hits.map((hit) => hit.case),
      choice,
    ),
    found: kept.slice(0, most).map(({ case: kase, terms }) => ({
      case: kase,
      title: excerpt(kase.title, terms, 200),
      excerpt: excerpt([kase.complaint, kase.story].join(" "), terms),
    })),
  };
}

const newestFirst = (a: Case, b: Case) =>
  a.received === b.received ? (a.id < b.id ? 1 : -1) : a.received < b.received ? 1 : -1;
