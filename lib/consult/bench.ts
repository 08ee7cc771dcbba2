import type { Case } from "../casebook/caseFile";
import type { Casebook } from "../casebook/loadCasebook";
import type { CauseModel } from "../diagnosis/causeModel";
import { buildReader, type Reader } from "../reading/reader";
import { appendRow, buildCaseTable, type CaseTable, replaceRow } from "../similarity/caseTable";
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
  const finished = [...casebook.cases.values()].filter(isFinished);
  const model = causeModelOf(vocabulary);
  const attributes = caseAttributes(vocabulary, model);
  const bench: Bench = {
    vocabulary,
    cases: new Map(finished.map((kase) => [kase.id, kase])),
    reader: buildReader(vocabulary),
    model,
    table: buildCaseTable(
      attributes,
      finished.map((kase) => caseRow(kase, vocabulary)),
    ),
    text: buildTextIndex(casebook.cases.values(), vocabulary),
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
  const before = bench.cases.get(kase.id);
  addToTextIndex(text, kase, vocabulary, before);
  if (before) {
    model.learn(lessonOf(before, vocabulary), -1);
    recordRepairs(repairs, before, -1);
  }
  if (!isFinished(kase)) return bench;
  model.learn(lessonOf(kase, vocabulary));
  recordRepairs(repairs, kase);
  if (before) replaceRow(table, caseRow(kase, vocabulary));
  else appendRow(table, caseRow(kase, vocabulary));
  return { ...bench, cases: new Map([...bench.cases, [kase.id, kase]]) };
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

const isFinished = ({ status }: Case) => status === "closed";
