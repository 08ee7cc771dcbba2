import type { LearnerSession } from "../../casebook/learners/learnerFile";

/** How a session went, from worst to best. */
export const waysItWent = ["missed", "nearly", "got it", "got it cleanly"] as const;
export type HowItWent = (typeof waysItWent)[number];

/** Over this the doubt was greater than the knowledge. Chosen: half sure and right, the rest left open, is 0.25 and a little. */
const mostDoubt = 0.3;
/** As sure as 70 in 100 and right, the rest left open, is 0.09 and a little. Chosen. */
const mostDoubtCleanly = 0.1;

/**
 * Judges a session by what was said and by the way there:
 *
 *   missed          the root cause was not among those named
 *   nearly          it was among them but not first, or first with a score over 0.3
 *   got it cleanly  first with a score of at most 0.1, after at least one check, nothing opened too soon, and for no more
 *                   minutes, risk reckoned in, than the record
 *   got it          first, and neither of the two above
 */
export function howItWent(
  session: Pick<
    LearnerSession,
    "verdict" | "score" | "checks" | "tooSoon" | "minutes" | "atStake" | "recordMinutes" | "recordAtStake"
  >,
): HowItWent {
  const { verdict, score, checks, tooSoon, minutes, atStake, recordMinutes, recordAtStake } = session;
  if (verdict === "missed") return "missed";
  if (verdict === "among them" || score > mostDoubt) return "nearly";
  const isCheap = minutes + atStake <= recordMinutes + recordAtStake;
  return score <= mostDoubtCleanly && checks > 0 && tooSoon === 0 && isCheap ? "got it cleanly" : "got it";
}
