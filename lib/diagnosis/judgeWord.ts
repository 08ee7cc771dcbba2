import { jeffreysInterval } from "../estimate/jeffreysInterval";
import { type FrequencyWord, frequencyRange, wordFor } from "./frequencyRange";

/** What cases say about a word: too few to say, in keeping with it, or off, with the word that they speak for. */
export type WordVerdict =
  | Readonly<{ kind: "few" }>
  | Readonly<{ kind: "fits" }>
  | Readonly<{ kind: "off"; proposed: FrequencyWord }>;

/** Under so many cases nothing is said against a word, however they fell. Chosen. */
export const leastCases = 5;
/**
 * How sure the interval is. 99 in 100 and not the usual 95: thousands of words are judged at once, and one in twenty wrongly
 * taken for off would be more than those that are. tests/lib/diagnosis/judgeWord.test.ts tells how seldom it errs: where the true share is
 * the word's own number in less than 4 of 1,000, at the very edge of its range in some 20.
 */
export const surely = 0.99;

/**
 * Judges a word of the handbook by cases: it is off where the Jeffreys interval of the share seen does not meet the word's
 * range. The word then proposed is the one in whose range the share lies, half a case added on either side.
 *
 * Only cases in which the check was made count, and a check is made where something is suspected: the share seen is of those,
 * and so are the handbook's words.
 *
 * @param seen in how many the finding was met, 0..looked
 * @param looked in how many the check was made
 * @throws RangeError when the counts are out of range
 * @example judgeWord("always", 1, 12) // off; proposed: "rarely"
 * Source: Brown, Cai & DasGupta 2001 (the interval); (seen + 1/2) / (looked + 1) is the mean of the same distribution.
 */
export function judgeWord(word: FrequencyWord, seen: number, looked: number): WordVerdict {
  if (looked < leastCases) return { kind: "few" };
  // The share seen lies in its interval: where it lies in the word's range the interval need not be worked out.
  if (wordFor(seen / looked) === word) return { kind: "fits" };
  const interval = jeffreysInterval(seen, looked, surely);
  const range = frequencyRange(word);
  if (interval.low < range.high && interval.high >= range.low) return { kind: "fits" };
  return { kind: "off", proposed: wordFor((seen + 0.5) / (looked + 1)) };
}
