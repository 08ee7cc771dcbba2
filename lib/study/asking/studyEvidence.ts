import type { Case } from "../../casebook/caseFile";
import type { Step } from "../../casebook/step";
import type { Finding } from "../../consult/finding";
import { caseFindings } from "../../consult/record/caseFindings";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { checksOfStep } from "./checksOfStep";
import { stepsBeforeCure } from "./stepsBeforeCure";

/** What a job has shown to somebody who asked for some checks. */
export type StudyEvidence = Readonly<{
  /** Steps of the recorded path that answer what was asked, in the order of the path. */
  steps: readonly Step[];
  findings: readonly Finding[];
  /** Checks that need not be asked any more: those asked for, done on this job or not, and those answered along with them. */
  settled: ReadonlySet<string>;
}>;

/** Gathers what is known of a past job after asking for some checks; nothing that came after the cure is told. */
export function studyEvidence(
  kase: Pick<Case, "path">,
  asked: readonly string[],
  vocabulary: Vocabulary,
): StudyEvidence {
  const wanted = new Set(asked);
  const told = stepsBeforeCure(kase.path)
    .map((step) => ({ step, answers: checksOfStep(step, vocabulary) }))
    .filter(({ answers }) => answers.some((check) => wanted.has(check)));
  const steps = told.map(({ step }) => step);
  return {
    steps,
    findings: caseFindings({ path: steps }, vocabulary),
    settled: new Set([...asked, ...told.flatMap(({ answers }) => answers)]),
  };
}
