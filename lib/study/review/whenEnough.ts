import type { Posterior } from "../../diagnosis/posterior";
import { leadingCause } from "./leadingCause";

/** From here on the evidence has spoken. Chosen. */
export const enoughProbability = 0.8;

/** When the evidence had spoken while the apprentice still went on. */
export type EnoughKnown = Readonly<{
  /** Checks made by then, 1 or more. */
  after: number;
  cause: string;
  probability: number;
  /** Whether what came later put another cause in front, so that going on was right. */
  overturned: boolean;
}>;

/**
 * Finds the first check after which one cause stood over 80 in 100 and which was not the last one made.
 *
 * @param beliefs before the first check and after each
 * @param ids of the causes in the beliefs' order
 * @returns null where it never was so before the last check
 */
export function whenEnough(beliefs: readonly Posterior[], ids: readonly string[]): EnoughKnown | null {
  const leaders = beliefs.map((belief) => leadingCause(belief, ids));
  const after = leaders.findIndex(
    (leader, at) => at > 0 && at < leaders.length - 1 && leader && leader.probability > enoughProbability,
  );
  const leader = leaders[after];
  return leader ? { after, ...leader, overturned: leaders.at(-1)?.cause !== leader.cause } : null;
}
