import type { Case } from "./caseFile";

/** Ids of a case's root causes, in the order written down, without repetition. */
export function rootCauses({ causes }: Pick<Case, "causes">): string[] {
  return [...new Set(causes.filter(({ role }) => role === "root").map(({ cause }) => cause))];
}
