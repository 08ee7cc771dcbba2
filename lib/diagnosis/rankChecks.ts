import { riskMinutes } from "./riskMinutes";

/** A check that could be done next: what it would tell, what it costs. */
export type OpenCheck = Readonly<{
  id: string;
  gainBits: number;
  /** Its own minutes and those of the checks that open the way. */
  minutes: number;
  riskClass: number;
}>;

/** Less than this is not worth the walk. */
const leastGainBits = 0.01;
/** From this class on a check waits while a safer one would tell nearly as much. */
const riskyClass = 3;
const nearlyAsMuch = 0.7;

/**
 * Ranks the checks by what they tell for their cost; a risky one stands behind every safe one that would tell nearly as
 * much.
 *
 * @returns best first, ties by id, each with whether it waits for safer ones; checks that would tell next to nothing are left out
 * Source: value of information per cost, Heckerman, Breese & Rommelse 1995.
 */
export function rankChecks<Check extends OpenCheck>(
  checks: readonly Check[],
): (Check & Readonly<{ waits: boolean }>)[] {
  const worth = (check: Check) => check.gainBits / (1 + check.minutes + riskMinutes(check.riskClass));
  const telling = checks.filter(({ gainBits }) => gainBits >= leastGainBits);
  const safe = telling.filter(({ riskClass }) => riskClass < riskyClass);
  const waits = (check: Check) =>
    check.riskClass >= riskyClass && safe.some(({ gainBits }) => gainBits >= nearlyAsMuch * check.gainBits);
  return telling
    .map((check) => ({ ...check, waits: waits(check) }))
    .sort((a, b) => Number(a.waits) - Number(b.waits) || worth(b) - worth(a) || (a.id < b.id ? -1 : 1));
}
