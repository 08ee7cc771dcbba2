import { stemmer } from "stemmer";
import { rememberWords } from "./rememberWords";

/** A word: a run of letters and digits; an apostrophe or point between them stays inside. */
export const wordPattern = /[\p{L}\p{N}]+(?:['’.][\p{L}\p{N}]+)*/gu;

/** A word of a text with where it stands: `start` inclusive, `end` exclusive, in UTF-16 units. */
export type Word = Readonly<{ text: string; start: number; end: number }>;

/**
 * Splits a text into words: runs of letters and digits; an apostrophe or point between them stays inside.
 *
 * @example splitWords("can't, .669 in").map(({ text }) => text) // ["can't", "669", "in"]
 */
export function splitWords(text: string): Word[] {
  return [...text.matchAll(wordPattern)].map((match) => ({
    text: match[0],
    start: match.index,
    end: match.index + match[0].length,
  }));
}

/**
 * Brings a word to the form under which it is indexed: lower case, no accents, no possessive, stemmed. What a word came to
 * is remembered, for the same ones come again and again.
 *
 * @example toTerm("Sticking") // "stick"
 * Source: Porter 1980, by way of the package stemmer.
 */
export const toTerm = rememberWords((word: string): string => {
  const plain = word
    .normalize("NFKD")
    .replace(/\p{M}+/gu, "")
    .toLowerCase()
    .replace(/['’]s$/u, "")
    .replace(/['’]/gu, "");
  return stemmer(plain);
});
