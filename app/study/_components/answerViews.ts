import { stepViews } from "@/app/_components/stepViews";
import type { Case } from "@/lib/casebook/caseFile";
import { isCheckStep, type Step } from "@/lib/casebook/step";
import type { Bench } from "@/lib/consult/bench/bench";
import { withoutCase } from "@/lib/consult/bench/withoutCase";
import type { Finding } from "@/lib/consult/finding";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import { type RevealedFinding, revealFinding } from "@/lib/study/asking/revealFinding";
import type { Check } from "@/lib/vocabulary/check";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A check that was asked for, and its answer in words. */
export type AnswerView = Readonly<{
  id: string;
  label: string;
  question: string;
  minutes: number;
  riskClass: number;
  /** What was found on that job, one line a time it was made; none where it was not done there. */
  found: readonly Readonly<{ about: string; words: string }>[];
  /** What readings came to. */
  comesTo: readonly string[];
  /** What is usual where it was not done, with the share of such jobs. */
  typical: Readonly<{ words: string; probability: number }> | null;
}>;

/** Puts the answers to the checks asked for into words, the case itself being unknown to what is called typical. */
export function answerViews(
  kase: Case,
  asked: readonly string[],
  bench: Bench,
  lengths: LengthWords,
): AnswerView[] {
  const { vocabulary } = bench;
  return withoutCase(bench, kase, () =>
    asked.flatMap((id, at) => {
      const check = vocabulary.checks.get(id);
      return check
        ? [viewOf(check, revealFinding(kase, id, asked.slice(0, at), bench), vocabulary, lengths)]
        : [];
    }),
  );
}

function viewOf(
  check: Check,
  revealed: RevealedFinding,
  vocabulary: Vocabulary,
  lengths: LengthWords,
): AnswerView {
  const { id, label, question, minutes, risk } = check;
  const view = { id, label, question, minutes, riskClass: risk, found: [], comesTo: [], typical: null };
  const labelOfOutcome = (outcome: string) =>
    check.outcomes.find((one) => one.id === outcome)?.label ?? outcome;
  if (revealed.kind === "not done") {
    const { typical } = revealed;
    return {
      ...view,
      typical: typical && { words: labelOfOutcome(typical.outcome), probability: typical.probability },
    };
  }
  const { steps, findings } = revealed;
  return {
    ...view,
    // What was noted then may tell the end of the story: it waits until that is told.
    found: stepViews({ path: [...steps] }, vocabulary, lengths).map(({ title, found }) => ({
      about: title,
      words: found,
    })),
    comesTo: sayReadings(steps, findings, vocabulary),
  };
}

/** The findings that no step states as such: what swaps, gauges and failed repairs come to. */
function sayReadings(steps: readonly Step[], findings: readonly Finding[], { checks }: Vocabulary): string[] {
  const stated = new Set(steps.filter(isCheckStep).map(({ check }) => check));
  const said = findings.flatMap(({ check: id, outcome }) => {
    const check = checks.get(id);
    if (!check || stated.has(id) || check.reads === "place" || check.reads === "way") return [];
    return [check.outcomes.find((one) => one.id === outcome)?.label ?? outcome];
  });
  return [...new Set(said)];
}
