import type { ReadingWords } from "../../vocabulary/readingWords";
import { measureTerm, type PreparedWords, splitTokens, type Token } from "./token";

/** Each way of saying how far a part was turned, the longest first. */
export type Turns = readonly Readonly<{ turn: string; words: readonly string[] }>[];

/** A turn found: which one, and its tokens from `first` to `last`, both inclusive. */
export type TurnFound = Readonly<{ turn: string; first: number; last: number }>;

/** A measure is compared as it was written: 180 degrees are not 90. */
const wordOf = ({ term, text }: Token) => (term === measureTerm ? text : term);

/** Makes the turns of reading.yaml ready for finding. */
export function buildTurns({ swapTurns }: ReadingWords, prepared: PreparedWords): Turns {
  return Object.entries(swapTurns)
    .flatMap(([turn, phrases]) =>
      phrases.map((phrase) => ({ turn, words: splitTokens(phrase, prepared).map(wordOf) })),
    )
    .sort((a, b) => b.words.length - a.words.length);
}

/**
 * Finds how far parts were turned, word for word; the longest way of saying it wins and none overlap.
 *
 * @returns in the order of the text
 */
export function findTurns(tokens: readonly Token[], turns: Turns): TurnFound[] {
  const taken = new Set<number>();
  const found: TurnFound[] = [];
  for (const { turn, words } of turns) {
    for (let first = 0; first + words.length <= tokens.length; first++) {
      const fits = words.every((word, offset) => {
        const token = tokens[first + offset];
        return token !== undefined && wordOf(token) === word && !taken.has(first + offset);
      });
      if (!fits) continue;
      for (let offset = 0; offset < words.length; offset++) taken.add(first + offset);
      found.push({ turn, first, last: first + words.length - 1 });
    }
  }
  return found.sort((a, b) => a.first - b.first);
}
