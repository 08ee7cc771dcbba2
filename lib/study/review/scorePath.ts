import { type PathCost, pathCost } from "./pathCost";
import type { WalkedCheck } from "./walkStudy";

/** What a way through the checks cost and taught. */
export type PathScore = PathCost &
  Readonly<{
    gainBits: number;
    /** The place, from 0, of the check that taught the most for its minutes; null where none taught anything. */
    best: number | null;
  }>;

/** What takes less is reckoned as a minute, so that a glance cannot win by dividing by nothing. Chosen. */
const leastMinutes = 1;
/** Less is no teaching. Chosen. */
const leastGainBits = 0.05;

/** Bits taught a minute; under a minute counts as one. */
export const gainPerMinute = ({ gainBits, minutes }: Pick<WalkedCheck, "gainBits" | "minutes">) =>
  gainBits / Math.max(leastMinutes, minutes);

/**
 * Adds up a way through the checks: minutes, risk and bits, and names the check that taught the most a minute.
 *
 * @returns zeros for no checks; of checks that taught alike the first is the best
 */
export function scorePath(checks: readonly WalkedCheck[]): PathScore {
  const rates = checks.map((check) => (check.gainBits >= leastGainBits ? gainPerMinute(check) : 0));
  const most = Math.max(0, ...rates);
  return {
    ...pathCost(checks),
    gainBits: checks.reduce((sum, { gainBits }) => sum + gainBits, 0),
    best: most > 0 ? rates.indexOf(most) : null,
  };
}
