import { editDistance } from "../../document/editDistance";
import { toTerm } from "../../text/terms";
import { type PreparedWords, splitTokens } from "../words/token";

/** A phrase of the vocabulary as terms without fillers, with what it means. */
export type Phrase<Meaning> = Readonly<{
  terms: readonly string[];
  text: string;
  meaning: Meaning;
  weight: number;
  /** Places among the terms of words that deny: each must stand just before the term that follows it. */
  denials: readonly number[];
}>;

/** Phrases by their terms, with how telling each term is. */
export type PhraseIndex<Meaning> = Readonly<{
  phrases: readonly Phrase<Meaning>[];
  byTerm: ReadonlyMap<string, readonly number[]>;
  /** Of how many different terms of each phrase a sentence must have something. */
  leastTerms: Uint8Array;
  /** Inverse document frequency of a term over the meanings, natural logarithm; Spärck Jones 1972. */
  weightOf: (term: string) => number;
  /** Index terms that a word may be a slip of, with a quality of 1 (the word itself) down to .6. */
  nearest: (term: string) => readonly Readonly<{ term: string; quality: number }>[];
}>;

/** A phrase of so many terms or more may lack some, down to two; a shorter one none. */
export const longPhrase = 4;

/**
 * Builds the index.
 *
 * @param entries each phrase with its meaning; `key` tells meanings apart
 * @param lexicon terms that are words in their own right: never taken for a slip of another
 */
export function buildPhraseIndex<Meaning>(
  entries: Iterable<Readonly<{ text: string; meaning: Meaning; key: string }>>,
  words: PreparedWords,
  lexicon: ReadonlySet<string> = new Set(),
): PhraseIndex<Meaning> {
  const meanings = new Map<string, Set<string>>();
  const bare: { terms: string[]; text: string; meaning: Meaning }[] = [];
  const keys = new Set<string>();
  for (const { text, meaning, key } of entries) {
    const tokens = splitTokens(text.replaceAll(measureSign, ".1"), words);
    const telling = tokens.filter((token) => !token.filler);
    const terms = [...new Set((telling.length > 0 ? telling : tokens).map((token) => token.term))];
    if (terms.length === 0) continue;
    bare.push({ terms, text, meaning });
    keys.add(key);
    for (const term of terms) meanings.set(term, (meanings.get(term) ?? new Set()).add(key));
  }
  const weights = new Map([...meanings].map(([term, { size }]) => [term, Math.log(1 + keys.size / size)]));
  const weightOf = (term: string) => weights.get(term) ?? Math.log(1 + keys.size);
  const phrases = bare.map((phrase) => ({
    ...phrase,
    weight: phrase.terms.reduce((sum, term) => sum + weightOf(term), 0),
    denials: phrase.terms.flatMap((term, at) => (words.denials.has(term) ? [at] : [])),
  }));
  const byTerm = new Map<string, number[]>();
  for (const [index, { terms }] of phrases.entries()) {
    for (const term of terms) {
      const listed = byTerm.get(term);
      if (listed) listed.push(index);
      else byTerm.set(term, [index]);
    }
  }
  const leastTerms = Uint8Array.from(phrases, ({ terms }) => (terms.length < longPhrase ? terms.length : 2));
  return { phrases, byTerm, leastTerms, weightOf, nearest: buildNearest([...byTerm.keys()], lexicon) };
}

/** In a phrase a lone # stands for any measure; after a letter it is a sharp ("G#"). */
const measureSign = /(?<!\p{L})#/gu;

/** Shorter words than this are taken as they stand: one slip would make them any other word. */
const shortestGuessed = 4;

function buildNearest(terms: readonly string[], lexicon: ReadonlySet<string>) {
  const known = new Set(terms);
  const remembered = new Map<string, readonly Readonly<{ term: string; quality: number }>[]>();
  return (word: string) => {
    if (known.has(word)) return [{ term: word, quality: 1 }];
    const before = remembered.get(word);
    if (before) return before;
    const spelledOut = /^\p{L}{2,}in$/u.test(word) ? toTerm(`${word}g`) : word;
    if (known.has(spelledOut)) return [{ term: spelledOut, quality: 0.95 }];
    const limit =
      word.length < shortestGuessed || /\d/.test(word) || lexicon.has(word) ? 0 : word.length < 9 ? 1 : 2;
    const near =
      limit === 0
        ? []
        : terms
            .filter((term) => term.length >= shortestGuessed && term[0] === word[0])
            .map((term) => ({ term, distance: editDistance(word, term, limit) }))
            .filter(({ distance }) => distance <= limit)
            .map(({ term, distance }) => ({ term, quality: distance === 1 ? 0.8 : 0.6 }));
    if (remembered.size < 20_000) remembered.set(word, near);
    return near;
  };
}
