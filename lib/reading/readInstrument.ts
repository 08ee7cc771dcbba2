import { chooseMatches } from "./chooseMatches";
import { matchPhrases } from "./matchPhrases";
import type { Reader } from "./reader";
import { splitTokens } from "./token";

/**
 * Finds the instrument that some words name: the longest name wins, then the one that lies deepest in the taxonomy.
 *
 * @param words the technician's own, or an id
 * @returns an instrument id, or undefined where no instrument is named
 * @example readInstrument("4 valve euph", reader) // "euphonium"
 */
export function readInstrument(words: string, reader: Reader): string | undefined {
  const { instruments, instrumentTree } = reader.vocabulary;
  const id = words.trim().toLowerCase();
  if (instruments.has(id)) return id;
  const tokens = splitTokens(words, reader.words);
  const exact = (text: string) => tokens.some((token) => token.text.toLowerCase() === text.toLowerCase());
  const named = chooseMatches(matchPhrases(tokens, reader.instruments), ({ score, tokens: at, phrase }) => {
    const loose = (at.at(-1) ?? 0) - (at[0] ?? 0) >= at.length;
    const depth = instrumentTree.depth(phrase.meaning) / 100;
    // A short abbreviation ("euph", "tpt") is taken only as it stands, never as a slip of another word.
    const guessed = phrase.terms.length === 1 && phrase.text.length <= 4 && !exact(phrase.text);
    return loose || guessed ? 0 : score + depth;
  });
  const weight = (match: (typeof named)[number]) => match.score;
  return [...named].sort((a, b) => weight(b) - weight(a))[0]?.phrase.meaning;
}
