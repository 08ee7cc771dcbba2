import { searchOptions } from "../searchOptions";

/** One field's words: how many different ones it has as written, stop words too, and how often each term stands in it. */
export type CountedWords = Readonly<{ different: number; terms: ReadonlyMap<string, number> }>;

/** Counts the words of a text. */
export function countWords(text: string): CountedWords {
  const words = searchOptions.tokenize(text);
  const terms = new Map<string, number>();
  for (const word of words) {
    const term = searchOptions.processTerm(word);
    if (term) terms.set(term, (terms.get(term) ?? 0) + 1);
  }
  return { different: new Set(words).size, terms };
}
