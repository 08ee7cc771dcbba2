import { searchOptions } from "../searchOptions";
import { scoreTerm } from "./scoreTerm";
import { scoringRoom } from "./scoringRoom";
import type { WordPostings } from "./wordPostings";

/** How many words of a text are compared by: the rarest tell the most, and each further one costs time. Chosen: see benchmarks. */
const mostWords = 8;

/**
 * Tells how alike a text and each of the texts indexed are by their words: BM25+ summed over the eight rarest words that the
 * index knows, multiplied by how many of them were found, scaled by what the text would score against itself.
 * That own score is estimated from the best text: with m of its T words found at a score s, all T would make s (T / m)^2,
 * since the score grows with the words and is multiplied by their number. Of several best ones that which holds the most words.
 *
 * @param numbers of the texts that are asked about, in any order; below 0 for none
 * @returns by the place in `numbers`: over 0 up to 1 for a text that holds any of the words, else 0; undefined where no text
 * indexed holds any; in the scoring room, so until the next question
 * Source: Robertson & Zaragoza 2009, with a factor of our own for the number of words found.
 */
export function likenessOf(
  postings: WordPostings,
  text: string,
  numbers: Int32Array,
): Float64Array | undefined {
  const textsWith = (term: string) => postings.terms.get(term)?.texts ?? 0;
  const known = new Set(
    searchOptions.tokenize(text).flatMap((word) => {
      const term = searchOptions.processTerm(word);
      return term !== null && textsWith(term) > 0 ? [term] : [];
    }),
  );
  const rarest = [...known].sort((a, b) => textsWith(a) - textsWith(b)).slice(0, mostWords);
  if (rarest.length === 0) return undefined;
  const texts = postings.ids.length;
  const { scores, found, similarities } = scoringRoom(postings, numbers.length);
  scores.fill(0, 0, texts);
  found.fill(0, 0, texts);
  for (const term of rarest) {
    const { numbers: holding, scores: added } = scoreTerm(postings, term);
    for (let at = 0; at < holding.length; at += 1) {
      const number = holding[at] ?? 0;
      scores[number] = (scores[number] ?? 0) + (added[at] ?? 0);
      found[number] = (found[number] ?? 0) + 1;
    }
  }
  let best = 0;
  let bestFound = 1;
  for (let number = 0; number < texts; number += 1) {
    const words = found[number] ?? 0;
    if (words === 0) continue;
    const score = (scores[number] ?? 0) * words;
    scores[number] = score;
    if (score > best || (score === best && words > bestFound)) {
      best = score;
      bestFound = words;
    }
  }
  const own = best * (rarest.length / bestFound) ** 2;
  for (let at = 0; at < numbers.length; at += 1) {
    const number = numbers[at] ?? -1;
    const share = number < 0 ? 0 : (scores[number] ?? 0) / own;
    similarities[at] = Math.min(1, share);
  }
  return similarities.subarray(0, numbers.length);
}
