import type { Case } from "../casebook/caseFile";

/** The root causes of a case: one as a rule, none where none was found; either is right where there are two. */
export const rootsOf = ({ causes }: Case): string[] =>
  causes.filter(({ role }) => role === "root").map(({ cause }) => cause);
