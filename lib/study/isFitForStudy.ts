import type { Case } from "../casebook/caseFile";
import { rootCauses } from "../casebook/rootCauses";
import { isRepairStep } from "../casebook/step";
import { stepsBeforeCure } from "./stepsBeforeCure";

/** Fewer checks before the cure leave nothing to work out. Chosen. */
const leastChecks = 3;

/** Tells whether a past job can be worked through: it is closed, its root cause is known, and enough was checked before the cure. */
export function isFitForStudy(kase: Pick<Case, "status" | "causes" | "path">): boolean {
  return (
    kase.status === "closed" &&
    rootCauses(kase).length > 0 &&
    stepsBeforeCure(kase.path).filter((step) => !isRepairStep(step)).length >= leastChecks
  );
}
