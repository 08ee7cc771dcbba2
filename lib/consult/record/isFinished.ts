import type { Case } from "../../casebook/caseFile";

/** Tells a finished case, which teaches and is compared, from the sheet of a job still open. */
export const isFinished = ({ status }: Case) => status === "closed";
