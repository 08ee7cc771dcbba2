import type { Case } from "../../../casebook/caseFile";
import type { CauseModel } from "../../../diagnosis/causeModel";
import type { WordModel } from "../../../diagnosis/wordModel";
import type { Reader } from "../../../reading/reader";
import { appendRow, buildCaseTable, type CaseTable, removeRow } from "../../../similarity/caseTable";
import type { Vocabulary } from "../../../vocabulary/vocabulary";
import { causeShares } from "../../causes/causeShares";
import { type RepairRecord, recordRepairs } from "../../repairs/repairRecords";
import { caseAttributes, caseOutcomes, caseRow } from "../caseAttributes";
import { causeModelOf } from "../causeModelOf";
import { learnWords, wordModelOf } from "../wordsOfCauses";

/** What the finished cases teach, in the four ways in which it is asked for. All of it tells of the same cases. */
export type Learned = Readonly<{
  model: CauseModel;
  table: CaseTable;
  /** The words by which each cause is told, in the handbook and in the cases. */
  spoken: WordModel;
  /** How each repair has turned out, by its id. */
  repairs: Map<string, RepairRecord>;
}>;

/** What learning a case needs beside it. */
export type Teaching = Readonly<{ vocabulary: Vocabulary; reader: Pick<Reader, "words" | "causeNotes"> }>;

/** What the handbook says by itself, before any case. */
export function learnHandbook({ vocabulary, reader }: Teaching): Learned {
  const model = causeModelOf(vocabulary);
  return {
    model,
    table: buildCaseTable(caseAttributes(vocabulary, model), []),
    spoken: wordModelOf(vocabulary, model, reader),
    repairs: new Map(),
  };
}

/** Takes a finished case that is not in it into all that is learned. */
export function takeInLesson(learned: Learned, kase: Case, teaching: Teaching): void {
  const outcomes = caseOutcomes(kase, teaching.vocabulary);
  teachCase({ ...learned, ...teaching }, kase, 1, outcomes);
  recordRepairs(learned.repairs, kase);
  appendRow(learned.table, caseRow(kase, outcomes));
}

/** Takes a case out of all that is learned, as it was taken in. */
export function takeBackLesson(learned: Learned, kase: Case, teaching: Teaching): void {
  teachCase({ ...learned, ...teaching }, kase, -1);
  recordRepairs(learned.repairs, kase, -1);
  removeRow(learned.table, kase.id);
}

/**
 * Teaches a finished case's findings and words, or with `sign` -1 takes the lesson back.
 *
 * @param outcomes of the case, where they have been worked out already
 */
export function teachCase(
  { vocabulary, model, spoken, reader }: Pick<Learned, "model" | "spoken"> & Teaching,
  kase: Case,
  sign: 1 | -1 = 1,
  outcomes: Readonly<Record<string, string>> = caseOutcomes(kase, vocabulary),
): void {
  const findings = new Map(Object.entries(outcomes));
  model.learn({ causes: causeShares(kase.causes), findings }, sign);
  learnWords(spoken, kase, reader.words, sign);
}
