import type { Case } from "../../casebook/caseFile";
import type { Bench } from "../../consult/bench/bench";
import { informationGainBits } from "../../diagnosis/informationGain";
import type { Check } from "../../vocabulary/check";
import { openForStudy } from "../asking/openForStudy";
import { studyEvidence } from "../asking/studyEvidence";
import type { StudyWalk } from "./walkStudy";

/** A check that was made before a safer one which would have told nearly as much. */
export type CheckTooSoon = Readonly<{
  /** Its place in the walk, from 0. */
  at: number;
  check: string;
  safer: string;
  /** What each was expected to tell at that moment. */
  gainBits: number;
  saferGainBits: number;
}>;

/** From this class on something is taken apart, and a safer check goes first. Chosen, common practice. */
const riskyClass = 2;
/** As for the bench's own ranking, see `rankChecks`. */
const nearlyAsMuch = 0.7;
/** A safer check that would itself tell next to nothing is no reproach. Chosen. */
const leastGainBits = 0.05;

/**
 * Finds the checks that took something apart, or worse, while a check of a lower class was open that was expected to tell
 * at least 0.7 times as much. A check that opens the way is judged by the most that lies behind it.
 *
 * @param walk as `walkStudy` has it for the same case
 * @returns in the order of the walk, each with the safer check that would have told the most (ties by id)
 */
export function checksTooSoon(
  kase: Pick<Case, "instrument" | "path">,
  walk: StudyWalk,
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
): CheckTooSoon[] {
  const asked = walk.checks.map(({ check }) => check);
  return asked.flatMap((id, at) => {
    const check = vocabulary.checks.get(id);
    const belief = walk.beliefs[at];
    if (!check || !belief || check.risk < riskyClass) return [];
    const { settled } = studyEvidence(kase, asked.slice(0, at), vocabulary);
    const gain = (one: Check) => informationGainBits(model, belief, one.id);
    const open = openForStudy(vocabulary, kase.instrument, settled);
    const behind = open.filter(({ first }) => first.length === 1 && first[0] === id);
    const gainBits = Math.max(gain(check), ...behind.map((one) => gain(one.check)));
    const [safer] = open
      .filter((one) => one.first.length === 0 && one.check.risk < check.risk)
      .map((one) => ({ id: one.check.id, gainBits: gain(one.check) }))
      .filter((one) => one.gainBits >= Math.max(leastGainBits, nearlyAsMuch * gainBits))
      .sort((a, b) => b.gainBits - a.gainBits || (a.id < b.id ? -1 : 1));
    return safer ? [{ at, check: id, safer: safer.id, gainBits, saferGainBits: safer.gainBits }] : [];
  });
}
