import type { Answer } from "@/lib/consult/answer";

/** Lowest share of the doubt at which each wording holds. The steps are chosen by ear, not measured. */
const steps = [
  { from: 0.5, words: "settles most" },
  { from: 0.25, words: "settles much" },
  { from: 0.1, words: "settles some" },
] as const;

/**
 * The doubt that is left among the causes of an answer: H = -sum p log2 p over the causes shown, none of them, and the rest.
 *
 * @returns bits, 0 or more
 * Source: Shannon 1948, section 6.
 */
export function doubtBits({ causes, noneFits }: Pick<Answer, "causes" | "noneFits">): number {
  const shown = [...causes.map(({ probability }) => probability), noneFits];
  const rest = Math.max(0, 1 - shown.reduce((sum, p) => sum + p, 0));
  return [...shown, rest].reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
}

/**
 * How much of the doubt a check is expected to settle.
 *
 * @param gainBits expected information gain of the check, bits
 * @param doubt the doubt that is left, bits
 * @returns the share in 0..1 and its wording
 */
export function settling(gainBits: number, doubt: number): Readonly<{ share: number; words: string }> {
  const share = doubt > 0 ? Math.min(1, Math.max(0, gainBits / doubt)) : 0;
  return { share, words: steps.find(({ from }) => share >= from)?.words ?? "settles a little" };
}
