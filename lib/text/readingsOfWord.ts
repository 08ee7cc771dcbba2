import { letterChanges } from "./letterChanges";
import type { WordPostings } from "./postings/wordPostings";
import { searchOptions } from "./searchOptions";

/** A term that a word asked for may mean, and what it counts beside the word itself (1). */
export type TermReading = Readonly<{ term: string; weight: number }>;

/** What is looked up for a word: the term asked for, and the terms of the index that it is read as. */
export type AskedTerm = Readonly<{ asked: string; readings: readonly TermReading[] }>;

/** Words of fewer letters than this are not guessed at: a slip in so short a word could be anything. */
const shortestFuzzy = 4;
/** Words of up to this many letters may have one slip, longer ones two. */
const longestOneSlip = 6;

/**
 * Reads a word as the terms that it may mean: itself; with `isLast`, every term that begins with it, since it may be only
 * begun; where the index does not know it, the terms a slip or two away and those with two neighbouring letters swapped.
 * A begun term counts p n / (n + .3 m), n letters long with m of them not typed; a term s slips away f n / (n + s);
 * p = .4, f = .3; a term that is both counts as begun.
 *
 * @returns what to look up, first for the word itself, then for each swap of its letters that the index knows
 */
export function readingsOfWord({ terms }: WordPostings, word: string, isLast: boolean): AskedTerm[] {
  const term = searchOptions.processTerm(word) ?? word;
  // Every term begins with a word of no letters.
  if (term === "") return [];
  const { prefix, fuzzy } = searchOptions.weights;
  const isGuessed = !terms.has(term) && term.length >= shortestFuzzy;
  const slips = isGuessed ? (term.length > longestOneSlip ? 2 : 1) : 0;
  const readings: TermReading[] = terms.has(term) ? [{ term, weight: 1 }] : [];
  if (isLast || isGuessed) {
    for (const other of terms.keys()) {
      if (other === term) continue;
      const { length } = other;
      if (isLast && other.startsWith(term)) {
        readings.push({ term: other, weight: (prefix * length) / (length + 0.3 * (length - term.length)) });
      } else if (isGuessed) {
        const changes = letterChanges(term, other, slips);
        if (changes <= slips) readings.push({ term: other, weight: (fuzzy * length) / (length + changes) });
      }
    }
  }
  const swapped = isGuessed ? swappedWords(word) : [];
  return [
    { asked: term, readings },
    ...swapped.flatMap((other) => {
      const meant = searchOptions.processTerm(other);
      return meant !== null && terms.has(meant)
        ? [{ asked: meant, readings: [{ term: meant, weight: 1 }] }]
        : [];
    }),
  ];
}

/** A word with each two neighbouring letters swapped: a slip that counts as two changes otherwise. */
const swappedWords = (word: string) =>
  Array.from({ length: word.length - 1 }, (_, at) => {
    const [first = "", second = ""] = word.slice(at, at + 2);
    return word.slice(0, at) + second + first + word.slice(at + 2);
  });
