import { isRepairStep, type Step } from "../../casebook/step";

/**
 * The steps of a path before the first repair that fixed it, or did harm: what the trouble looked like while it was still
 * there and was the only one. What was seen later is the mended instrument, or what the shop did to it.
 *
 * @returns the whole path where no repair did either
 */
export function stepsBeforeCure(path: readonly Step[]): readonly Step[] {
  const changed = path.findIndex(
    (step) => isRepairStep(step) && (step.result === "fixed" || step.result === "harm"),
  );
  return changed < 0 ? path : path.slice(0, changed);
}
