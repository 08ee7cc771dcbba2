import { isBoreStep, isCheckStep, isPlugStep, isSwapStep, type Step } from "../../casebook/step";
import { caseFindings } from "../../consult/record/caseFindings";
import type { Check } from "../../vocabulary/check";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/**
 * Names the checks that one recorded step answers: the check itself first, then what was noted along with it (where in the
 * stroke, which way). A reading answers the checks that it is taken for, a repair that failed those that it was a trial of.
 *
 * @returns ids without repetition; none for the repair that fixed it
 */
export function checksOfStep(step: Step, vocabulary: Vocabulary): string[] {
  const own = isCheckStep(step) ? [step.check] : readingChecks(step, vocabulary);
  return [...new Set([...own, ...caseFindings({ path: [step] }, vocabulary).map(({ check }) => check)])];
}

/** A swap by itself tells nothing, and plugs may leave the matter open: the check was made all the same. */
function readingChecks(step: Step, { checks }: Vocabulary): string[] {
  const kinds: Check["reads"][] = isSwapStep(step)
    ? ["swap"]
    : isPlugStep(step)
      ? ["reduction", ...(step.piston ? (["clearance"] as const) : [])]
      : isBoreStep(step)
        ? ["ovality"]
        : [];
  return [...checks.values()].flatMap(({ id, reads }) => (reads && kinds.includes(reads) ? [id] : []));
}
