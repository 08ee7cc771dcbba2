import type { Case } from "../../casebook/caseFile";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { checksOfStep } from "../asking/checksOfStep";
import { stepsBeforeCure } from "../asking/stepsBeforeCure";

/**
 * The recorded path as if it had been asked for check by check: each check once, where it was first made, leaving out
 * what was noted along with another.
 */
export function recordedAsks(kase: Pick<Case, "path">, vocabulary: Vocabulary): string[] {
  const asks: string[] = [];
  const settled = new Set<string>();
  for (const step of stepsBeforeCure(kase.path)) {
    const [main, ...along] = checksOfStep(step, vocabulary);
    if (main === undefined) continue;
    if (!settled.has(main)) asks.push(main);
    for (const id of [main, ...along]) settled.add(id);
  }
  return asks;
}
