import { findEntry } from "./postings/findEntry";
import { scoreTerm } from "./postings/scoreTerm";
import type { WordPostings } from "./postings/wordPostings";
import { type AskedTerm, readingsOfWord } from "./readingsOfWord";
import { searchOptions } from "./searchOptions";
import type { TextIndex } from "./textIndex";

/**
 * A case found by text: its score (over 0, only comparable within one search), and the index terms that matched, told on
 * asking, as long as the case stays in the index.
 */
export type TextHit = Readonly<{ id: string; score: number; terms: () => string[] }>;

/**
 * Searches the cases as one types: all words must be there, the last may be only begun, and a word that the casebook
 * does not know is read as the nearest words that it does. Where nothing holds all the words, cases with some of them come.
 * The score is the sum of BM25+ over all terms that the words are read as, each by its weight, multiplied by how many of the
 * words, as asked, were found.
 *
 * @returns hits by falling score, ties by id; every case has a chance only through words it holds, so an empty query finds none
 */
export function searchText({ words: postings }: TextIndex, text: string): TextHit[] {
  const words = searchOptions.tokenize(text).filter((word) => searchOptions.processTerm(word) !== null);
  const asked = words.map((word, at) => readingsOfWord(postings, word, at === words.length - 1));
  const { scores, wordsFound } = scoreWords(postings, asked);
  const holding = countMost(wordsFound, words.length);
  const least = holding > 0 ? words.length : 1;
  const found = askedTermsFound(postings, asked.flat());
  const terms = [...new Set(asked.flat().flatMap(({ readings }) => readings.map(({ term }) => term)))];
  const hits: TextHit[] = [];
  for (let number = 0; number < scores.length; number += 1) {
    const id = postings.ids[number];
    if (id === undefined || (wordsFound[number] ?? 0) < least) continue;
    hits.push({
      id,
      score: (scores[number] ?? 0) * (found[number] ?? 0),
      terms: () => terms.filter((term) => holdsTerm(postings, term, id)),
    });
  }
  return hits.sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
}

/** By the number of the text: the sum of its scores, and how many of the words it holds. */
function scoreWords(postings: WordPostings, asked: readonly (readonly AskedTerm[])[]) {
  const scores = new Float64Array(postings.ids.length);
  const wordsFound = new Uint32Array(postings.ids.length);
  const lastWord = new Int32Array(postings.ids.length).fill(-1);
  asked.forEach((word, wordNumber) => {
    for (const { term, weight } of word.flatMap(({ readings }) => readings)) {
      const { numbers, scores: added } = scoreTerm(postings, term);
      for (let at = 0; at < numbers.length; at += 1) {
        const number = numbers[at] ?? 0;
        scores[number] = (scores[number] ?? 0) + weight * (added[at] ?? 0);
        if (lastWord[number] === wordNumber) continue;
        lastWord[number] = wordNumber;
        wordsFound[number] = (wordsFound[number] ?? 0) + 1;
      }
    }
  });
  return { scores, wordsFound };
}

const countMost = (wordsFound: Uint32Array, most: number) =>
  most === 0 ? 0 : wordsFound.reduce((count, found) => count + (found === most ? 1 : 0), 0);

/** By the number of the text: how many different terms asked for it holds in some reading. A word asked twice counts once. */
function askedTermsFound(postings: WordPostings, all: readonly AskedTerm[]): Uint32Array {
  const byTerm = new Map<string, Set<string>>();
  for (const { asked, readings } of all) {
    const terms = byTerm.get(asked) ?? new Set();
    byTerm.set(asked, terms);
    for (const { term } of readings) terms.add(term);
  }
  const found = new Uint32Array(postings.ids.length);
  const last = new Int32Array(postings.ids.length).fill(-1);
  [...byTerm.values()].forEach((terms, askedNumber) => {
    for (const term of terms) {
      const list = postings.terms.get(term);
      if (list === undefined) continue;
      for (let entry = 0; entry < 2 * list.length; entry += 2) {
        const number = Math.floor((list.entries[entry] ?? 0) / postings.boosts.length);
        if (last[number] === askedNumber) continue;
        last[number] = askedNumber;
        found[number] = (found[number] ?? 0) + 1;
      }
    }
  });
  return found;
}

function holdsTerm({ terms, numberOf, boosts }: WordPostings, term: string, id: string): boolean {
  const list = terms.get(term);
  const number = numberOf.get(id);
  if (list === undefined || number === undefined) return false;
  const at = findEntry(list, number * boosts.length);
  return at < list.length && (list.entries[2 * at] ?? 0) < (number + 1) * boosts.length;
}
