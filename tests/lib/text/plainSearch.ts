import MiniSearch, { type Query, type SearchResult } from "minisearch";
import type { Case } from "@/lib/casebook/caseFile";
import { type CaseDocument, caseDocument } from "@/lib/text/caseDocument";
import { searchOptions } from "@/lib/text/searchOptions";
import { splitWords, toTerm } from "@/lib/text/terms";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

const { processTerm } = searchOptions;
const tokenize = (text: string) => splitWords(text).map((word) => word.text);

/** Search and likeness by words the way a library does them: its index, its scores, its tree of terms. */
export function plainSearch(cases: readonly Case[], vocabulary: Vocabulary) {
  const search = new MiniSearch<CaseDocument>({ ...searchOptions, tokenize });
  const terms = new Map<string, number>();
  const count = (kase: Case, by: 1 | -1) => {
    const { id: _, ...texts } = caseDocument(kase, vocabulary);
    const words = Object.values(texts).flatMap(tokenize);
    for (const term of new Set(words.flatMap((word) => processTerm(word) ?? []))) {
      terms.set(term, (terms.get(term) ?? 0) + by);
    }
  };
  const put = (kase: Case, before?: Case) => {
    if (before) {
      search.remove(caseDocument(before, vocabulary));
      count(before, -1);
    }
    search.add(caseDocument(kase, vocabulary));
    count(kase, 1);
  };
  for (const kase of cases) put(kase);
  const textsWith = (term: string) => terms.get(term) ?? 0;
  const run = (query: Query) =>
    search
      .search(query)
      .map(({ id, score, terms: found }: SearchResult) => ({ id: String(id), score, terms: found }))
      .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));

  return {
    put,
    /** As `wordSimilarities`, word for word. */
    similarities(text: string): ReadonlyMap<string, number> {
      const words = new Map(
        tokenize(text).flatMap((word) => {
          const term = processTerm(word);
          return term !== null && textsWith(term) > 0 ? [[term, word] as const] : [];
        }),
      );
      const rarest = [...words].sort(([a], [b]) => textsWith(a) - textsWith(b)).slice(0, 8);
      if (rarest.length === 0) return new Map();
      const hits = search.search({ combineWith: "OR", queries: rarest.map(([, word]) => word) });
      const [best] = hits;
      if (!best) return new Map();
      const own = best.score * (rarest.length / Math.max(1, best.queryTerms.length)) ** 2;
      return new Map(hits.map(({ id, score }) => [String(id), Math.min(1, score / own)]));
    },
    /** As `searchText`. */
    find(text: string) {
      const words = tokenize(text).filter((word) => processTerm(word) !== null);
      if (words.length === 0) return [];
      const queries = words.map((word, at) => wordQuery(word, at === words.length - 1));
      const all = run({ combineWith: "AND", queries });
      return all.length > 0 || words.length === 1 ? all : run({ combineWith: "OR", queries });
    },
  };

  function wordQuery(word: string, isLast: boolean): Query {
    const term = processTerm(word) ?? word;
    const isGuessed = textsWith(term) === 0 && term.length >= 4;
    const options = { prefix: isLast, fuzzy: isGuessed ? (term.length > 6 ? 2 : 1) : false };
    const own: Query = { queries: [word], ...options };
    const swapped = isGuessed ? swappedWords(word).filter((other) => terms.has(toTerm(other))) : [];
    return swapped.length === 0
      ? own
      : { combineWith: "OR", queries: [own, { queries: swapped, prefix: false, fuzzy: false }] };
  }
}

const swappedWords = (word: string) =>
  Array.from({ length: word.length - 1 }, (_, at) => {
    const [first = "", second = ""] = word.slice(at, at + 2);
    return word.slice(0, at) + second + first + word.slice(at + 2);
  });
