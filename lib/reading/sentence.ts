import type { OutcomeMeaning } from "./clauses/outcomeMeaning";
import { findMentions, type Mention } from "./parts/mentions";
import { matchPhrases, type PhraseMatch } from "./phrases/matchPhrases";
import type { Reader } from "./reader";
import { findScopes, type Scopes } from "./words/scopes";
import type { Token } from "./words/token";
import { findTurns } from "./words/turns";

/** A sentence with all that is found in it before anything is read: phrases of outcomes, parts, and how the small words bear. */
export type Sentence = Readonly<{
  tokens: readonly Token[];
  matches: readonly PhraseMatch<OutcomeMeaning>[];
  mentions: readonly Mention[];
  scopes: Scopes;
}>;

/**
 * Takes the tokens of a text apart into sentences.
 *
 * @param instrument instrument id that bounds which parts make sense; undefined where it is not known
 * @param admits says which outcomes make sense here
 */
export function takeApart(
  tokens: readonly Token[],
  reader: Reader,
  instrument: string | undefined,
  admits: (meaning: OutcomeMeaning) => boolean,
): Sentence[] {
  return splitSentences(tokens).map((sentence) => {
    const matches = matchPhrases(sentence, reader.outcomes, admits);
    const notNumbers = tokensOfPlaces(matches, sentence, reader);
    return {
      tokens: sentence,
      matches,
      mentions: findMentions(sentence, reader, instrument, notNumbers),
      scopes: findScopes(sentence, reader.sequences),
    };
  });
}

/** The places of every clause's tokens, in order. */
export function clausesOf({ tokens, scopes: { clauseOf } }: Sentence): number[][] {
  const clauses: number[][] = [];
  for (const at of tokens.keys()) {
    const open = clauses.at(-1);
    if (open && clauseOf(open[0] ?? 0) === clauseOf(at)) open.push(at);
    else clauses.push([at]);
  }
  return clauses;
}

function splitSentences(tokens: readonly Token[]): Token[][] {
  const sentences: Token[][] = [];
  for (const token of tokens) {
    const current = sentences.at(-1);
    if (!current || token.breakBefore === "sentence") sentences.push([token]);
    else current.push(token);
  }
  return sentences;
}

/** Numbers that are words of a phrase ("a third of the way down", "past 4th position", "turned a third") count no valve. */
function tokensOfPlaces(
  matches: readonly PhraseMatch<OutcomeMeaning>[],
  sentence: readonly Token[],
  { turns }: Reader,
): Set<number> {
  const unbroken = ({ tokens: at }: PhraseMatch<OutcomeMeaning>) =>
    sentence
      .slice(at[0], (at.at(-1) ?? 0) + 1)
      .every((token, offset) => token.filler || at.includes((at[0] ?? 0) + offset));
  const turned = findTurns(sentence, turns).flatMap(({ first, last }) => range(first, last));
  const phrased = matches
    .filter((match) => match.tokens.length > 1 && unbroken(match))
    .flatMap(({ tokens }) => tokens);
  return new Set([...phrased, ...turned].filter((at) => sentence[at]?.place !== undefined));
}

const range = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, offset) => first + offset);
