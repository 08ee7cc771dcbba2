import type { Case } from "../../casebook/caseFile";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { checksOfStep } from "./checksOfStep";
import { stepsBeforeCure } from "./stepsBeforeCure";

/** Ids of the checks that a past job has an answer to, whatever they were noted with. */
export function checksMade(kase: Pick<Case, "path">, vocabulary: Vocabulary): ReadonlySet<string> {
  return new Set(stepsBeforeCure(kase.path).flatMap((step) => checksOfStep(step, vocabulary)));
}
