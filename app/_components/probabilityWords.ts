/** Lowest chance at which each wording holds, most likely first. The steps are chosen by ear, not measured. */
const steps = [
  { from: 0.9, words: "Nearly sure" },
  { from: 0.7, words: "Very likely" },
  { from: 0.5, words: "More likely than not" },
  { from: 0.25, words: "Quite possible" },
  { from: 0.1, words: "Possible" },
  { from: 0.03, words: "Unlikely" },
] as const;

/**
 * A chance in words.
 *
 * @param probability 0..1
 * @returns one of seven wordings, from "Nearly sure" to "Very unlikely"
 * @example probabilityWords(0.46) // "Quite possible"
 */
export function probabilityWords(probability: number): string {
  return steps.find(({ from }) => probability >= from)?.words ?? "Very unlikely";
}
