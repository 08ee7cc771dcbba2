import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import { isRepairStep } from "../../casebook/step";
import { stepsBeforeCure } from "../asking/stepsBeforeCure";

/** Fewer checks before the cure leave nothing to work out. Chosen. */
const leastChecks = 3;

/** What was found of each case, kept as long as the case is: a casebook is asked about as a whole, time and again. */
const known = new WeakMap<object, boolean>();

/** Tells whether a past job can be worked through: it is closed, its root cause is known, and enough was checked before the cure. */
export function isFitForStudy(kase: Pick<Case, "status" | "causes" | "path">): boolean {
  const before = known.get(kase);
  if (before !== undefined) return before;
  const isFit =
    kase.status === "closed" &&
    rootCauses(kase).length > 0 &&
    stepsBeforeCure(kase.path).filter((step) => !isRepairStep(step)).length >= leastChecks;
  known.set(kase, isFit);
  return isFit;
}
