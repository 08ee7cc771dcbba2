import type { Case } from "../casebook/caseFile";

/** The root cause of a case, or undefined where none was found. */
export const rootOf = ({ causes }: Case) => causes.find(({ role }) => role === "root")?.cause;
