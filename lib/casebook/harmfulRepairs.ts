import type { Case } from "./caseFile";
import { isRepairStep } from "./step";

/** Ids of the repairs that did harm in a case, once each: a step says so, or the case lists the harm. */
export function harmfulRepairs({ path, harms }: Pick<Case, "path" | "harms">): string[] {
  const bySteps = path.flatMap((step) => (isRepairStep(step) && step.result === "harm" ? step.repair : []));
  return [...new Set([...bySteps, ...harms.map(({ repair }) => repair)])];
}
