import { labelOf } from "@/app/_components/labelOf";
import { groupByPart } from "@/lib/study/asking/groupByPart";
import type { StudyCheck } from "@/lib/study/asking/openForStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { askHref, type StudyQuery } from "./studyQuery";

/** A check that can be asked for, as the list of them shows it. */
export type AskView = Readonly<{
  id: string;
  label: string;
  question: string;
  minutes: number;
  riskClass: number;
  href: string;
  /** What has to come before it; none where it is open. */
  first: string;
  /** Everything that it is found by. */
  words: string;
}>;
export type AskGroup = Readonly<{ id: string; label: string; checks: readonly AskView[] }>;

/** What stands for the parts that have few checks each. */
const elsewhere = { id: "elsewhere", label: "Elsewhere on it" };

/** The checks that can be asked for, part by part, the safest of each first. */
export function askGroups(
  open: readonly StudyCheck[],
  instrument: string,
  query: StudyQuery,
  vocabulary: Vocabulary,
): AskGroup[] {
  return groupByPart(open, instrument, vocabulary).map(({ part, checks }) => {
    const { id, label } = part === null ? elsewhere : { id: part, label: labelOf(vocabulary.parts, part) };
    return {
      id,
      label,
      checks: checks.map(({ check, first }) => ({
        id: check.id,
        label: check.label,
        question: check.question,
        minutes: check.minutes,
        riskClass: check.risk,
        href: askHref(query, check.id, id),
        first: first.map((needed) => labelOf(vocabulary.checks, needed)).join(", "),
        words: [check.label, check.question, label, ...check.synonyms].join(" "),
      })),
    };
  });
}
