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
  const numbers = Int32Array.from(words.ids.flatMap((id, number) => (id === undefined ? [] : [number])));
  const alike = new Map<string, number>();
  for (const [at, similarity] of likenessOf(words, text, numbers)?.entries() ?? []) {
    const id = words.ids[numbers[at] ?? 0];
    if (id !== undefined && similarity > 0) alike.set(id, similarity);
  }
  return alike;
}
