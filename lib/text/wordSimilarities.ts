import type MiniSearch from "minisearch";
import { searchOptions } from "./searchOptions";

/** What words can be looked up in: an index, and in how many of its texts each term stands. */
export type WordIndex = Readonly<{
  search: Pick<MiniSearch, "search">;
  terms: ReadonlyMap<string, number>;
}>;

/** How many words of a text are compared by: the rarest tell the most, and each further one costs time. Chosen: see benchmarks. */
const mostWords = 8;

/**
 * Tells how alike a text and each case are by their words: BM25 scaled by what the text would score against itself.
 * That own score is estimated from the best case: with m of its T words found at a score s, all T would make s (T / m)^2,
 * since the score grows with the words and is multiplied by their number.
 *
 * @returns id -> similarity over 0 up to 1, for the cases that hold any of the words
 * Source: Robertson & Zaragoza 2009, with the library's own factor for the number of words matched.
 */
export function wordSimilarities({ search, terms }: WordIndex, text: string): ReadonlyMap<string, number> {
  const words = new Map(
    searchOptions.tokenize(text).flatMap((word) => {
      const term = searchOptions.processTerm(word);
      return term !== null && (terms.get(term) ?? 0) > 0 ? [[term, word] as const] : [];
    }),
  );
  const rarest = [...words].sort(([a], [b]) => (terms.get(a) ?? 0) - (terms.get(b) ?? 0)).slice(0, mostWords);
  if (rarest.length === 0) return new Map();
  const hits = search.search({ combineWith: "OR", queries: rarest.map(([, word]) => word) });
  const [best] = hits;
  if (!best) return new Map();
  const own = best.score * (rarest.length / Math.max(1, best.queryTerms.length)) ** 2;
  return new Map(hits.map(({ id, score }) => [String(id), Math.min(1, score / own)]));
}
