import type { Case } from "../casebook/caseFile";
import type { Casebook } from "../casebook/loadCasebook";
import type { CauseModel } from "../diagnosis/causeModel";
import { buildReader, type Reader } from "../reading/reader";
import { appendRow, buildCaseTable, type CaseTable, removeRow } from "../similarity/caseTable";
import { buildEntryIndex } from "../text/entryIndex";
import { addToTextIndex, buildTextIndex, type TextIndex } from "../text/textIndex";
import type { WordIndex } from "../text/wordSimilarities";
import type { Cause } from "../vocabulary/cause";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { caseAttributes, caseOutcomes, caseRow } from "./caseAttributes";
import { causeModelOf } from "./causeModelOf";
import { causeShares } from "./causeShares";
import { type RepairRecord, recordRepairs } from "./repairRecords";

/**
 * Everything that a consultation needs, derived from vocabulary and casebook and kept in memory: droppable, rebuilt at
 * will. Only finished cases teach and are compared.
 */
export type Bench = Readonly<{
  vocabulary: Vocabulary;
  cases: ReadonlyMap<string, Case>;
  /** Sheets of jobs still open: found by their words, they teach nothing and nothing is compared with them. */
  open: ReadonlyMap<string, Case>;
  reader: Reader;
  model: CauseModel;
  table: CaseTable;
  text: TextIndex;
  /** The words of the handbook's causes. */
  causeWords: WordIndex;
  /** How each repair has turned out, by its id. */
  repairs: Map<string, RepairRecord>;
}>;

/** Derives the bench from what was loaded. */
export function buildBench(vocabulary: Vocabulary, casebook: Casebook): Bench {
  const all = [...casebook.cases.values()];
  const finished = all.filter(isFinished);
  const model = causeModelOf(vocabulary);
  const attributes = caseAttributes(vocabulary, model);
  const bench: Bench = {
    vocabulary,
    cases: byId(finished),
    open: byId(all.filter((kase) => !isFinished(kase))),
    reader: buildReader(vocabulary),
    model,
    table: buildCaseTable(
      attributes,
      finished.map((kase) => caseRow(kase, vocabulary)),
    ),
    text: buildTextIndex(all, vocabulary),
    causeWords: buildEntryIndex([...vocabulary.causes.values()].map(causeEntry)),
    repairs: new Map(),
  };
  for (const kase of finished) {
    model.learn(lessonOf(kase, vocabulary));
    recordRepairs(bench.repairs, kase);
  }
  return bench;
}

/**
 * Takes one case into the bench, new or in place of its earlier version, without building anything again.
 *
 * @returns the bench to use from now on; the one given shares its parts and must be dropped
 */
export function takeInCase(bench: Bench, kase: Case): Bench {
  const { vocabulary, model, table, text, repairs } = bench;
  const cases = new Map(bench.cases);
  const open = new Map(bench.open);
  const learned = cases.get(kase.id);
  addToTextIndex(text, kase, vocabulary, learned ?? open.get(kase.id));
  if (learned) {
    model.learn(lessonOf(learned, vocabulary), -1);
    recordRepairs(repairs, learned, -1);
    removeRow(table, kase.id);
    cases.delete(kase.id);
  }
  open.delete(kase.id);
  if (isFinished(kase)) {
    model.learn(lessonOf(kase, vocabulary));
    recordRepairs(repairs, kase);
    appendRow(table, caseRow(kase, vocabulary));
    cases.set(kase.id, kase);
  } else open.set(kase.id, kase);
  return { ...bench, cases, open };
}

const causeEntry = ({ id, label, synonyms, comesAbout, prove }: Cause) => ({
  id,
  words: [label, ...synonyms, comesAbout, prove].join(" "),
});

/** What a finished case teaches the model. */
export function lessonOf(kase: Case, vocabulary: Vocabulary) {
  return {
    causes: causeShares(kase.causes),
    findings: new Map(Object.entries(caseOutcomes(kase, vocabulary))),
  };
}

const byId = (cases: readonly Case[]) => new Map(cases.map((kase) => [kase.id, kase]));
const isFinished = ({ status }: Case) => status === "closed";
