import { chooseMatches } from "./chooseMatches";
import { matchPhrases, type PhraseMatch } from "./matchPhrases";
import type { Reader } from "./reader";
import { splitTokens } from "./token";

/**
 * Finds the instrument that some words name: an instrument before the family that it belongs to, then the most
 * telling name, then the one that lies deepest in the taxonomy.
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
  const depthOf = ({ phrase }: PhraseMatch<string>) => instrumentTree.depth(phrase.meaning);
  const named = chooseMatches(matchPhrases(tokens, reader.instruments), (match) => {
    const { score, tokens: at, phrase } = match;
    const loose = (at.at(-1) ?? 0) - (at[0] ?? 0) >= at.length;
    // A short abbreviation ("euph", "tpt") is taken only as it stands, never as a slip of another word.
    const guessed = phrase.terms.length === 1 && phrase.text.length <= 4 && !exact(phrase.text);
    return loose || guessed ? 0 : score + depthOf(match) / 100;
  });
  const meanings = named.map(({ phrase }) => phrase.meaning);
  const isOutdone = (family: string) =>
    meanings.some((meaning) => meaning !== family && instrumentTree.isA(meaning, family));
  return named
    .filter(({ phrase }) => !isOutdone(phrase.meaning))
    .sort((a, b) => b.score - a.score || depthOf(b) - depthOf(a))[0]?.phrase.meaning;
}
