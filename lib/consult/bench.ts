import type { Case } from "../casebook/caseFile";
import type { Casebook } from "../casebook/loadCasebook";
import type { CauseModel } from "../diagnosis/causeModel";
import type { WordModel } from "../diagnosis/wordModel";
import { buildReader, type Reader } from "../reading/reader";
import { appendRow, buildCaseTable, type CaseTable, removeRow } from "../similarity/caseTable";
import { addToTextIndex, buildTextIndex, type TextIndex } from "../text/textIndex";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { caseAttributes, caseOutcomes, caseRow } from "./caseAttributes";
import { causeModelOf } from "./causeModelOf";
import { causeShares } from "./causeShares";
import { type RepairRecord, recordRepairs } from "./repairRecords";
import { learnWords, wordModelOf } from "./wordsOfCauses";

/**
 * Everything that a consultation needs, derived from vocabulary and casebook and kept in memory: droppable, rebuilt at
 * will. Only finished cases teach and are compared. All that grows with the casebook is written to by `takeInCase` only.
 */
export type Bench = Readonly<{
  vocabulary: Vocabulary;
  cases: Map<string, Case>;
  /** Sheets of jobs still open: found by their words, they teach nothing and nothing is compared with them. */
  open: Map<string, Case>;
  reader: Reader;
  model: CauseModel;
  table: CaseTable;
  text: TextIndex;
  /** The words by which each cause is told, in the handbook and in the cases. */
  spoken: WordModel;
  /** How each repair has turned out, by its id. */
  repairs: Map<string, RepairRecord>;
}>;

/**
 * Derives the bench from what was loaded.
 *
 * @param text the text index of all the casebook's cases, where there is one already; the bench writes to it from then on
 */
export function buildBench(
  vocabulary: Vocabulary,
  casebook: Casebook,
  text: TextIndex = buildTextIndex(casebook.cases.values(), vocabulary),
): Bench {
  const all = [...casebook.cases.values()];
  const finished = all.filter(isFinished);
  const model = causeModelOf(vocabulary);
  const attributes = caseAttributes(vocabulary, model);
  const reader = buildReader(vocabulary);
  const bench: Bench = {
    vocabulary,
    cases: byId(finished),
    open: byId(all.filter((kase) => !isFinished(kase))),
    reader,
    model,
    table: buildCaseTable(
      attributes,
      finished.map((kase) => caseRow(kase, vocabulary)),
    ),
    text,
    spoken: wordModelOf(vocabulary, model, reader.words),
    repairs: new Map(),
  };
  for (const kase of finished) {
    learnCase(bench, kase);
    recordRepairs(bench.repairs, kase);
  }
  return bench;
}

/**
 * Takes one case into the bench, new or in place of its earlier version, without building or copying anything that grows
 * with the casebook.
 *
 * It writes to the bench that it is given. Model, table, words, repairs and cases have to tell of the same cases, so none of
 * them may stay behind: whoever still holds a bench from before sees the new case in all of it, as if asked later. That is
 * safe because the taking in is one synchronous step, which no consultation sees half done, and because a case itself never
 * changes. A loop over the cases that waits between its turns meets every case once, in its old or its new version.
 *
 * @returns the bench given
 */
export function takeInCase(bench: Bench, kase: Case): Bench {
  const { vocabulary, table, text, repairs, cases, open } = bench;
  const learned = cases.get(kase.id);
  addToTextIndex(text, kase, vocabulary, learned ?? open.get(kase.id));
  if (learned) {
    learnCase(bench, learned, -1);
    recordRepairs(repairs, learned, -1);
    removeRow(table, kase.id);
  }
  if (isFinished(kase)) {
    learnCase(bench, kase);
    recordRepairs(repairs, kase);
    appendRow(table, caseRow(kase, vocabulary));
    // Set over the earlier version and not taken out first: a map's loop would meet what is taken out and put in again twice.
    cases.set(kase.id, kase);
    open.delete(kase.id);
  } else {
    cases.delete(kase.id);
    open.set(kase.id, kase);
  }
  return bench;
}

/** Teaches a finished case's findings and words, or with `sign` -1 takes the lesson back. */
export function learnCase(
  { vocabulary, model, spoken, reader }: Pick<Bench, "vocabulary" | "model" | "spoken" | "reader">,
  kase: Case,
  sign: 1 | -1 = 1,
): void {
  const findings = new Map(Object.entries(caseOutcomes(kase, vocabulary)));
  model.learn({ causes: causeShares(kase.causes), findings }, sign);
  learnWords(spoken, kase, reader.words, sign);
}

const byId = (cases: readonly Case[]) => new Map(cases.map((kase) => [kase.id, kase]));
const isFinished = ({ status }: Case) => status === "closed";
