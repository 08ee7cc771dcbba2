import { frequencyOf } from "./frequencyWords";

/** A word for how often. */
export type FrequencyWord = keyof typeof frequencyOf;

/** The words from the most to the least often. */
export const frequencyWords = [
  "always",
  "usually",
  "often",
  "sometimes",
  "rarely",
  "never",
] as const satisfies readonly FrequencyWord[];

/**
 * The shares that a word stands for: those nearer to its number than to any other word's.
 *
 * @returns low <= share < high in 0..1; the ranges of all words lie side by side and leave nothing out
 * @example frequencyRange("usually") // { low: 0.7, high: 0.885 }, rounded
 */
export function frequencyRange(word: FrequencyWord): Readonly<{ low: number; high: number }> {
  const at = frequencyWords.indexOf(word);
  const [above, below] = [frequencyWords[at - 1], frequencyWords[at + 1]];
  const between = (other: FrequencyWord) => (frequencyOf[word] + frequencyOf[other]) / 2;
  return { low: below ? between(below) : 0, high: above ? between(above) : 1 };
}

/** The word whose range holds a share, 0..1. */
export function wordFor(share: number): FrequencyWord {
  return frequencyWords.find((word) => share >= frequencyRange(word).low) ?? "never";
}
