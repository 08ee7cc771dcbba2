import type { Case } from "../../casebook/caseFile";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { legalAsks } from "../asking/legalAsks";
import type { StudyAnswer } from "../review/reviewStudy";
import { type AnswerRow, settleAnswer } from "./settleAnswer";

/** An answer as it was sent, sound or not. */
export type SentAnswer = Readonly<{
  asked: readonly string[];
  rows: readonly AnswerRow[];
  repair: string | null;
  first: string | null;
}>;

/** The answer as it can be judged, or all that keeps it from being taken, in words. */
export type SettledStudy =
  | Readonly<{ answer: StudyAnswer; problems: readonly [] }>
  | Readonly<{ answer: undefined; problems: readonly string[] }>;

/** Reads an answer to a past job: the checks that count, causes that the instrument can have, a repair and a check there are. */
export function settleStudy(
  kase: Pick<Case, "instrument" | "path">,
  { asked, rows, repair, first }: SentAnswer,
  vocabulary: Vocabulary,
): SettledStudy {
  const { causes, repairs, checks } = vocabulary;
  const { named, problems } = settleAnswer(rows, (id) => {
    const cause = causes.get(id);
    return cause !== undefined && appliesTo(vocabulary, cause.families, kase.instrument);
  });
  if (!named) return { answer: undefined, problems };
  const answer = {
    asked: legalAsks(kase, asked, vocabulary),
    named,
    repair: repair !== null && repairs.has(repair) ? repair : undefined,
    first: first !== null && checks.has(first) ? first : undefined,
  };
  return { answer, problems: [] };
}
