import MiniSearch from "minisearch";
import { searchOptions } from "./searchOptions";
import type { WordIndex } from "./wordSimilarities";

/** Entries of the handbook, each with all its words in one string. */
export type EntryWords = Readonly<{ id: string; words: string }>;

/** Builds a word index over handbook entries, with the same words and stems as the index of cases. */
export function buildEntryIndex(entries: readonly EntryWords[]): WordIndex {
  const { idField, tokenize, processTerm } = searchOptions;
  const search = new MiniSearch<EntryWords>({ fields: ["words"], idField, tokenize, processTerm });
  search.addAll(entries);
  const terms = new Map<string, number>();
  for (const { words } of entries) {
    for (const term of new Set(tokenize(words).flatMap((word) => processTerm(word) ?? []))) {
      terms.set(term, (terms.get(term) ?? 0) + 1);
    }
  }
  return { search, terms };
}
