import type { Bench } from "../bench/bench";
import type { Problem } from "../problem";
import type { SourcedFinding } from "../understand/understandProblem";

/**
 * The problem's words, of the free text and of the evidence, without those that say that something is sound: "no dents" tells
 * of no dent.
 */
export function wordsOfTrouble(
  { says = "", evidence }: Problem,
  findings: readonly SourcedFinding[],
  { vocabulary }: Bench,
): Readonly<{ says: string; told: string }> {
  const sound = findings.filter(
    ({ check, outcome, shown }) => shown.absent || vocabulary.checks.get(check)?.normal === outcome,
  );
  const soundWords = new Set(sound.map(({ shown }) => shown.from));
  let said = says;
  for (const { shown } of sound) {
    if (!shown.span) continue;
    const [from, to] = shown.span;
    said = said.slice(0, from) + " ".repeat(to - from) + said.slice(to);
  }
  const told = evidence
    .map(({ check, found }) => `${check}: ${found}`)
    .filter((words) => !soundWords.has(words));
  return { says: said, told: told.join(". ") };
}
