import type { FrequencyWord } from "../../diagnosis/frequencyRange";
import { judgeWord, type WordVerdict } from "../../diagnosis/judgeWord";
import type { Cause } from "../../vocabulary/cause";
import { findingKey } from "../keyFindings";
import type { SeenOutcomes } from "./seenFindings";

/** A word of the handbook beside the cases: found in `seen` of the `looked` jobs with this root cause in which it was checked. */
export type JudgedTell = Readonly<{
  cause: string;
  check: string;
  others: boolean;
  outcome: string;
  word: FrequencyWord;
  seen: number;
  looked: number;
  verdict: WordVerdict;
}>;

/** Sets every word that the handbook says of a cause beside what was found in its cases, in the handbook's order. */
export function judgeTells(cause: Cause, seen: SeenOutcomes | undefined): JudgedTell[] {
  return [[cause.findings, false] as const, [cause.others, true] as const].flatMap(([findings, others]) =>
    Object.entries(findings).flatMap(([check, words]) => {
      const outcomes = seen?.get(findingKey(check, others));
      const looked = [...(outcomes?.values() ?? [])].reduce((sum, count) => sum + count, 0);
      return Object.entries(words).map(([outcome, word]) => {
        const found = outcomes?.get(outcome) ?? 0;
        const verdict = judgeWord(word, found, looked);
        return { cause: cause.id, check, others, outcome, word, seen: found, looked, verdict };
      });
    }),
  );
}
