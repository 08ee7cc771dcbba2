import type { Case } from "../../casebook/caseFile";
import { formatPartRef } from "../../casebook/partRef";
import { rootCauses } from "../../casebook/rootCauses";
import type { Step } from "../../casebook/step";
import type { Bench } from "../../consult/bench/bench";
import type { Finding } from "../../consult/finding";
import { studyEvidence } from "./studyEvidence";
import { type TypicalOutcome, typicalOutcome } from "./typicalOutcome";

/** What asking for a check brings: what was found on that job, or that it was not done there and what is usual. */
export type RevealedFinding =
  | Readonly<{
      kind: "found";
      check: string;
      /** The recorded steps that answer it, in their order. */
      steps: readonly Step[];
      /** What is known now and was not before, readings taken together with earlier ones. */
      findings: readonly Finding[];
    }>
  | Readonly<{ kind: "not done"; check: string; typical: TypicalOutcome | null }>;

/**
 * Answers a check that is asked for on a past job from its recorded path before the cure: every time it was made, on
 * whatever part, with what was noted along with it. What is typical is not a finding and counts as no evidence.
 *
 * @param before checks asked for earlier: a swap tells more beside how the valves run by themselves
 * @param bench must not have learned the case itself (see `withoutCase`), or what is typical is what was found
 */
export function revealFinding(
  kase: Pick<Case, "path" | "causes">,
  check: string,
  before: readonly string[],
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
): RevealedFinding {
  const { steps } = studyEvidence(kase, [check], vocabulary);
  if (steps.length > 0) {
    const known = new Set(studyEvidence(kase, before, vocabulary).findings.map(sayFinding));
    const { findings } = studyEvidence(kase, [...before, check], vocabulary);
    return { kind: "found", check, steps, findings: findings.filter((one) => !known.has(sayFinding(one))) };
  }
  const [root] = rootCauses(kase);
  return {
    kind: "not done",
    check,
    typical: root === undefined ? null : typicalOutcome(model, root, check),
  };
}

const sayFinding = ({ check, outcome, part }: Finding) =>
  `${check} ${outcome} ${part === undefined ? "" : formatPartRef(part)}`;
