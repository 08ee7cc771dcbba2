import { likenessOf } from "./postings/likenessOf";
import type { WordPostings } from "./postings/wordPostings";

/** What words can be looked up in. */
export type WordIndex = Readonly<{ words: WordPostings }>;

/**
 * Tells how alike a text and each case are by their words; see `likenessOf`.
 *
 * @returns id -> similarity over 0 up to 1, for the cases that hold any of the words
 */
export function wordSimilarities({ words }: WordIndex, text: string): ReadonlyMap<string, number> {
  const { numbers, similarities } = likenessOf(words, text);
  const alike = new Map<string, number>();
  for (let at = 0; at < numbers.length; at += 1) {
    const id = words.ids[numbers[at] ?? 0];
    if (id !== undefined) alike.set(id, similarities[at] ?? 0);
  }
  return alike;
}
