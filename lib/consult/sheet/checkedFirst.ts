import type { Case } from "../../casebook/caseFile";
import { isCheckStep, isRepairStep } from "../../casebook/step";

/**
 * The checks that were made on a job before a repair was first done: by its path, and by what was ticked beside the repair
 * on the plan. What is checked afterwards is proof, and came too late to warn.
 */
export function checkedFirst(
  { path }: Pick<Case, "path">,
  { repair, ticked = [] }: Readonly<{ repair: string; ticked?: readonly string[] | undefined }>,
): ReadonlySet<string> {
  const done = path.findIndex((step) => isRepairStep(step) && step.repair === repair);
  const before = done < 0 ? path : path.slice(0, done);
  return new Set([...ticked, ...before.filter(isCheckStep).map(({ check }) => check)]);
}
