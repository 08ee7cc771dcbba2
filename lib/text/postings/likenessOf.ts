import { searchOptions } from "../searchOptions";
import { scoreTerm } from "./scoreTerm";
import type { WordPostings } from "./wordPostings";

/** How many words of a text are compared by: the rarest tell the most, and each further one costs time. Chosen: see benchmarks. */
const mostWords = 8;

/** The texts that hold any of the words, by rising number, each with its similarity over 0 up to 1. */
export type Likeness = Readonly<{ numbers: Int32Array; similarities: Float64Array }>;

/**
 * Tells how alike a text and each of the texts indexed are by their words: BM25+ summed over the eight rarest words that the
 * index knows, multiplied by how many of them were found, scaled by what the text would score against itself.
 * That own score is estimated from the best text: with m of its T words found at a score s, all T would make s (T / m)^2,
 * since the score grows with the words and is multiplied by their number. Of several best ones that which holds the most words.
 *
 * Source: Robertson & Zaragoza 2009, with a factor of our own for the number of words found.
 */
export function likenessOf(postings: WordPostings, text: string): Likeness {
  const textsWith = (term: string) => postings.terms.get(term)?.texts ?? 0;
  const known = new Set(
    searchOptions.tokenize(text).flatMap((word) => {
      const term = searchOptions.processTerm(word);
      return term !== null && textsWith(term) > 0 ? [term] : [];
    }),
  );
  const rarest = [...known].sort((a, b) => textsWith(a) - textsWith(b)).slice(0, mostWords);
  const scores = new Float64Array(postings.ids.length);
  const found = new Uint8Array(postings.ids.length);
  for (const term of rarest) {
    const { numbers, scores: added } = scoreTerm(postings, term);
    for (let at = 0; at < numbers.length; at += 1) {
      const number = numbers[at] ?? 0;
      scores[number] = (scores[number] ?? 0) + (added[at] ?? 0);
      found[number] = (found[number] ?? 0) + 1;
    }
  }
  let holding = 0;
  let best = 0;
  let bestFound = 1;
  for (let number = 0; number < scores.length; number += 1) {
    const words = found[number] ?? 0;
    if (words === 0) continue;
    holding += 1;
    const score = (scores[number] ?? 0) * words;
    scores[number] = score;
    if (score > best || (score === best && words > bestFound)) {
      best = score;
      bestFound = words;
    }
  }
  const own = best * (rarest.length / bestFound) ** 2;
  const numbers = new Int32Array(holding);
  const similarities = new Float64Array(holding);
  let at = 0;
  for (let number = 0; number < scores.length; number += 1) {
    if (found[number] === 0) continue;
    numbers[at] = number;
    similarities[at] = Math.min(1, (scores[number] ?? 0) / own);
    at += 1;
  }
  return { numbers, similarities };
}
