import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import type { OutcomeMeaning } from "./clauses/outcomeMeaning";
import { matchPhrases, type PhraseMatch } from "./phrases/matchPhrases";
import type { Reader } from "./reader";
import { splitTokens, type Token } from "./words/token";
import { findTurns } from "./words/turns";

/**
 * What the result of a swap test depended on: the place in the stroke and the way (outcomes of the checks that read them), and
 * how far the one part was turned in the other (a key of the vocabulary's `swapTurns`).
 */
export type SwapHow = Readonly<{ where?: string; way?: string; turned?: string }>;

/** The least that a place or a way must be worth to be taken, in units of term weight. Chosen as for findings. */
const leastWorth = 1.2;

/** Tells whether a check asks where in the stroke, or which way. */
const isOfStroke = ({ reads }: Check) => reads === "place" || reads === "way";

/**
 * Finds what a swap's result depended on among some words.
 *
 * @param matches phrases found in the sentence, of any checks
 * @param from, to the tokens to look at, both inclusive
 * @returns the best of each with the tokens that they took
 */
export function findSwapHow(
  sentence: readonly Token[],
  matches: readonly PhraseMatch<OutcomeMeaning>[],
  { turns }: Reader,
  from: number,
  to: number,
): Readonly<{ how: SwapHow; tokens: readonly number[] }> {
  const isInside = (at: number) => at >= from && at <= to;
  const [turned] = findTurns(sentence, turns).filter(({ first, last }) => isInside(first) && isInside(last));
  const turnTokens = turned
    ? Array.from({ length: turned.last - turned.first + 1 }, (_, offset) => turned.first + offset)
    : [];
  const best = (reads: Check["reads"]) =>
    matches
      .filter(
        ({ phrase, tokens, score }) =>
          phrase.meaning.check.reads === reads &&
          score >= leastWorth &&
          tokens.every((at) => isInside(at) && !turnTokens.includes(at)),
      )
      .sort((a, b) => b.score - a.score || (a.tokens[0] ?? 0) - (b.tokens[0] ?? 0))[0];
  const [place, way] = [best("place"), best("way")];
  return {
    how: {
      ...(place ? { where: place.phrase.meaning.outcome.id } : {}),
      ...(way ? { way: way.phrase.meaning.outcome.id } : {}),
      ...(turned ? { turned: turned.turn } : {}),
    },
    tokens: [...(place?.tokens ?? []), ...(way?.tokens ?? []), ...turnTokens],
  };
}

/**
 * Reads what a swap's result depended on: ids with commas between, or words.
 *
 * @returns words that name neither place, way nor turn come back as the place: equal words mean the same place
 * @example readSwapHow("two thirds down, only coming up", reader, "trumpet") // { where: "two-thirds", way: "up" }
 */
export function readSwapHow(words: string, reader: Reader, instrument: string | undefined): SwapHow {
  const { vocabulary } = reader;
  const checks = [...vocabulary.checks.values()].filter(
    (check) => isOfStroke(check) && appliesTo(vocabulary, check.families, instrument),
  );
  const named = words.split(",").map((id) => howOfId(id.trim(), checks, reader));
  if (named.every((how) => how !== undefined)) return Object.assign({}, ...named);
  const tokens = splitTokens(words, reader.words);
  const matches = matchPhrases(tokens, reader.outcomes, ({ check }) => checks.includes(check));
  const { how } = findSwapHow(tokens, matches, reader, 0, tokens.length - 1);
  return Object.keys(how).length > 0 ? how : { where: words };
}

function howOfId(id: string, checks: readonly Check[], { vocabulary }: Reader): SwapHow | undefined {
  if (Object.hasOwn(vocabulary.words.swapTurns, id)) return { turned: id };
  const check = checks.find(({ outcomes }) => outcomes.some((outcome) => outcome.id === id));
  return check && (check.reads === "place" ? { where: id } : { way: id });
}
