import type { Bench } from "../bench/bench";
import type { Problem } from "../problem";
import { blankOut } from "../understand/blankOut";
import type { SourcedFinding } from "../understand/understandProblem";

/**
 * The problem's words, of the free text and of the evidence, without those that say that something is sound: "no dents" tells
 * of no dent. What is only guessed to be sound keeps its words.
 *
 * @param observed the free text without what somebody only believes
 */
export function wordsOfTrouble(
  observed: string,
  evidence: Problem["evidence"],
  findings: readonly SourcedFinding[],
  { vocabulary }: Bench,
): Readonly<{ says: string; told: string }> {
  const sound = findings.filter(
    ({ check, outcome, shown, how }) =>
      how !== "words" && (shown.absent || vocabulary.checks.get(check)?.normal === outcome),
  );
  const soundWords = new Set(sound.map(({ shown }) => shown.from));
  const told = evidence
    .map(({ check, found }) => `${check}: ${found}`)
    .filter((words) => !soundWords.has(words));
  return {
    says: blankOut(
      observed,
      sound.flatMap(({ shown }) => (shown.span ? [shown.span] : [])),
    ),
    told: told.join(". "),
  };
}
