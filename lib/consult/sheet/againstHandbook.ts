import type { Case } from "../../casebook/caseFile";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { keyFindings, parseFindingKey } from "../keyFindings";
import { caseFindings } from "../record/caseFindings";

/** A finding that the handbook says is rarely or never met with a cause. */
export type Contradiction = Readonly<{
  check: string;
  outcome: string;
  /** Check and outcome in words; "the others" where it was found on the siblings of the troubled part. */
  words: string;
  often: "rarely" | "never";
}>;

/** Lists what was found on a job that the handbook says is rarely or never met with each cause: what is never met first. */
export function againstHandbook(
  kase: Pick<Case, "path">,
  causes: readonly string[],
  vocabulary: Vocabulary,
): ReadonlyMap<string, readonly Contradiction[]> {
  const keyed = [...keyFindings(caseFindings(kase, vocabulary), vocabulary)];
  return new Map(
    causes.map((id) => {
      const cause = vocabulary.causes.get(id);
      const against = keyed.flatMap(([key, { outcome }]): Contradiction[] => {
        const { check, others } = parseFindingKey(key);
        const often = (others ? cause?.others : cause?.findings)?.[check]?.[outcome];
        if (often !== "rarely" && often !== "never") return [];
        const entry = vocabulary.checks.get(check);
        const label = entry?.outcomes.find((one) => one.id === outcome)?.label ?? outcome;
        const words = `${entry?.label ?? check}${others ? ", the others" : ""}: ${label.toLowerCase()}`;
        return [{ check, outcome, words, often }];
      });
      return [id, against.sort((a, b) => (a.often === b.often ? 0 : a.often === "never" ? -1 : 1))] as const;
    }),
  );
}
