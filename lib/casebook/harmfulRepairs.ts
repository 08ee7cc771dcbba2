import type { Case } from "./caseFile";
import { isRepairStep } from "./step";

/** Ids of the repairs that did harm in a case, once each: a step says so, or the case lists the harm. */
export function harmfulRepairs({ path, harms }: Pick<Case, "path" | "harms">): string[] {
  const found: string[] = [];
  const add = (repair: string) => {
    if (!found.includes(repair)) found.push(repair);
  };
  for (const step of path) if (isRepairStep(step) && step.result === "harm") add(step.repair);
  for (const { repair } of harms) add(repair);
  return found;
}
