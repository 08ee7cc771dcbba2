import { editDistance } from "./editDistance";

/**
 * Finds the known word that somebody probably meant.
 *
 * @returns the nearest of `known` within a third of the word's length, the first where several are as near; undefined where none is
 * @example nearestWord("trumpt", ["tuba", "trumpet"]) // "trumpet"
 */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase(), least - 1);
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}
