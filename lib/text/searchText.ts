import type { Query, SearchOptions, SearchResult } from "minisearch";
import { fillSearchIndex } from "./searchIndex";
import { searchOptions } from "./searchOptions";
import type { TextIndex } from "./textIndex";

/** A case found by text: its score (over 0, only comparable within one search) and the index terms that matched. */
export type TextHit = Readonly<{ id: string; score: number; terms: readonly string[] }>;

/** Words of fewer letters than this are not guessed at: a slip in so short a word could be anything. */
const shortestFuzzy = 4;
/** Words of up to this many letters may have one slip, longer ones two. */
const longestOneSlip = 6;

/**
 * Searches the cases as one types: all words must be there, the last may be only begun, and a word that the casebook
 * does not know is read as the nearest words that it does. Where nothing holds all the words, cases with some of them come.
 *
 * @returns hits by falling score, ties by id; every case has a chance only through words it holds, so an empty query finds none
 */
export function searchText(index: TextIndex, text: string): TextHit[] {
  const words = searchOptions.tokenize(text).filter((word) => searchOptions.processTerm(word) !== null);
  if (words.length === 0) return [];
  const queries = words.map((word, position) => wordQuery(index, word, position === words.length - 1));
  const all = run(index, { combineWith: "AND", queries });
  return all.length > 0 || words.length === 1 ? all : run(index, { combineWith: "OR", queries });
}

function wordQuery({ words: { terms } }: TextIndex, word: string, isLast: boolean): Query {
  const term = searchOptions.processTerm(word) ?? word;
  const isGuessed = !terms.has(term) && term.length >= shortestFuzzy;
  const slips = term.length > longestOneSlip ? 2 : 1;
  const options: SearchOptions = { prefix: isLast, fuzzy: isGuessed ? slips : false };
  const own: Query = { queries: [word], ...options };
  const isKnown = (other: string) => terms.has(searchOptions.processTerm(other) ?? "");
  const swapped = isGuessed ? swappedWords(word).filter(isKnown) : [];
  return swapped.length === 0
    ? own
    : { combineWith: "OR", queries: [own, { queries: swapped, prefix: false, fuzzy: false }] };
}

/** A word with each two neighbouring letters swapped: the slip that the library counts as two. */
const swappedWords = (word: string) =>
  Array.from({ length: word.length - 1 }, (_, at) => {
    const [first = "", second = ""] = word.slice(at, at + 2);
    return word.slice(0, at) + second + first + word.slice(at + 2);
  });

function run({ search }: TextIndex, query: Query): TextHit[] {
  return fillSearchIndex(search)
    .search(query)
    .map(({ id, score, terms }: SearchResult) => ({ id: String(id), score, terms }))
    .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
}
