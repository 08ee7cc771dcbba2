import type { Fields } from "../../casebook/form/caseForm";
import { stepSchema } from "../../casebook/step";

/**
 * Leaves out the steps that a path has already, its minutes and notes aside.
 *
 * @param steps readings as steps
 * @param path as plain data
 * @returns in the order given
 */
export function newReadings(steps: readonly Fields[], path: readonly unknown[]): readonly Fields[] {
  const known = new Set(path.map(markOf));
  return steps.filter((step) => !known.has(markOf(step)));
}

/** What two steps have in common if and only if they say the same. */
function markOf(step: unknown): string {
  const { minutes: _, note: __, ...said } = stepSchema.safeParse(step).data ?? { minutes: 0 };
  return JSON.stringify(said);
}
