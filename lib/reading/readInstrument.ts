import { appliesTo } from "../vocabulary/appliesTo";
import { chooseMatches } from "./phrases/chooseMatches";
import { matchPhrases, type PhraseMatch } from "./phrases/matchPhrases";
import type { Reader } from "./reader";
import { splitTokens } from "./words/token";

/**
 * Finds the instrument that some words name: an instrument before the family that it belongs to, then the most
 * telling name, then the one that lies deepest in the taxonomy. A name that several have ("bari", "CC tuba") means the one
 * whose parts are spoken of beside it, else the first in the vocabulary.
 *
 * @param words the technician's own, or an id
 * @param beside what else was said, by which a shared name is settled
 * @returns an instrument id, or undefined where no instrument is named
 * @example readInstrument("4 valve euph", reader) // "euphonium"
 */
export function readInstrument(words: string, reader: Reader, beside = words): string | undefined {
  const { instruments, instrumentTree } = reader.vocabulary;
  const id = words.trim().toLowerCase();
  if (instruments.has(id)) {
    const namesakes = [...instruments.values()].filter(({ synonyms }) => synonyms.includes(id));
    return settleShared([id, ...namesakes.map((one) => one.id)], beside, reader);
  }
  const tokens = splitTokens(words, reader.words);
  const exact = (text: string) => tokens.some((token) => token.text.toLowerCase() === text.toLowerCase());
  const depthOf = ({ phrase }: PhraseMatch<string>) => instrumentTree.depth(phrase.meaning);
  const worth = (match: PhraseMatch<string>) => {
    const { score, tokens: at, phrase } = match;
    const loose = (at.at(-1) ?? 0) - (at[0] ?? 0) >= at.length;
    // A short abbreviation ("euph", "tpt") is taken only as it stands, never as a slip of another word.
    const guessed = phrase.terms.length === 1 && phrase.text.length <= 4 && !exact(phrase.text);
    return loose || guessed ? 0 : score + depthOf(match) / 100;
  };
  const matches = matchPhrases(tokens, reader.instruments);
  const named = chooseMatches(matches, worth);
  const meanings = named.map(({ phrase }) => phrase.meaning);
  const isOutdone = (family: string) =>
    meanings.some((meaning) => meaning !== family && instrumentTree.isA(meaning, family));
  const [best] = named
    .filter(({ phrase }) => !isOutdone(phrase.meaning))
    .sort((a, b) => b.score - a.score || depthOf(b) - depthOf(a));
  if (!best) return undefined;
  const shared = matches.filter(
    (match) => String(match.tokens) === String(best.tokens) && worth(match) === worth(best),
  );
  return settleShared([...new Set(shared.map(({ phrase }) => phrase.meaning))], beside, reader);
}

/** Of several instruments with one name, the one that has the most of the parts spoken of; the first where they are alike. */
function settleShared(
  candidates: readonly string[],
  beside: string,
  { vocabulary, parts, words }: Reader,
): string | undefined {
  if (candidates.length < 2) return candidates[0];
  const named = matchPhrases(splitTokens(beside, words), parts).filter(
    ({ phrase, score }) => score >= phrase.weight && phrase.text.length > shortestTelling,
  );
  const spokenOf = new Set(named.map(({ phrase }) => phrase.meaning));
  const partsOf = (candidate: string) =>
    [...spokenOf].filter((part) =>
      appliesTo(vocabulary, vocabulary.parts.get(part)?.families ?? [], candidate),
    ).length;
  return candidates.reduce((best, candidate) => (partsOf(candidate) > partsOf(best) ? candidate : best));
}

/** A part's name as short as this ("p", "stm") settles nothing. Chosen. */
const shortestTelling = 3;
