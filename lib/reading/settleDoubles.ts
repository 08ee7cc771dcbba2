import type { Vocabulary } from "../vocabulary/vocabulary";
import type { FindingRead } from "./findingRead";

/**
 * One finding a check and part: on a scale the worst that was said; elsewhere trouble before soundness ("pads look good,
 * one is torn"), and of two troubles what was said first without doubt.
 */
export function settleDoubles(findings: readonly FindingRead[], vocabulary: Vocabulary): FindingRead[] {
  const kept = new Map<string, FindingRead>();
  for (const finding of findings) {
    const key = `${finding.check} ${finding.part?.others ? "other" : ""} ${finding.part?.place ?? ""}`;
    const before = kept.get(key);
    const check = vocabulary.checks.get(finding.check);
    const rank = ({ outcome }: FindingRead) => {
      if (check?.normal === undefined || outcome === check.normal) return 0;
      return check.ordered ? check.outcomes.findIndex(({ id }) => id === outcome) : 1;
    };
    const surer = before?.doubtful === true && !finding.doubtful;
    const asSure = before?.doubtful === finding.doubtful;
    if (!before || surer || (asSure && rank(finding) > rank(before))) kept.set(key, finding);
  }
  return [...kept.values()].sort((a, b) => a.span[0] - b.span[0]);
}
