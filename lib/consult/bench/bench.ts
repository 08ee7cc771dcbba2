import type { Case } from "../../casebook/caseFile";
import { partOf } from "../../casebook/lateMap";
import type { Casebook } from "../../casebook/loadCasebook";
import type { WordModel } from "../../diagnosis/wordModel";
import { buildReader, type Reader } from "../../reading/reader";
import { addToTextIndex, buildTextIndex, type TextIndex } from "../../text/textIndex";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { isFinished } from "../record/isFinished";
import { type Learned, type Teaching, takeBackLesson, takeInLesson } from "./learned/learned";
import { learnCasebook } from "./learned/loadLearned";
import { makeRowTexts, numberTexts, type RowTexts } from "./rowTexts";
import { pairModelOf } from "./wordsOfCauses";

/**
 * Everything that a consultation needs, derived from vocabulary and casebook and kept in memory: droppable, rebuilt at
 * will. Only finished cases teach and are compared. All that grows with the casebook is written to by `takeInCase` only.
 */
export type Bench = Learned &
  Readonly<{
    vocabulary: Vocabulary;
    cases: Map<string, Case>;
    /** Sheets of jobs still open: found by their words, they teach nothing and nothing is compared with them. */
    open: Map<string, Case>;
    reader: Reader;
    /** The pairs of words by which the handbook tells of each cause. */
    pairs: WordModel;
    text: TextIndex;
    /** Where in the text index the words of each row of the case table are. */
    rowTexts: RowTexts;
  }>;

/** The parts of a bench that grow with the casebook, as they are given where there is a snapshot of them. */
export type BenchParts = Readonly<{
  /** Gives the text index of all the casebook's cases; the bench writes to it from then on. */
  indexText: (casebook: Casebook, vocabulary: Vocabulary) => TextIndex;
  /** Gives what its finished cases teach; the bench writes to it from then on. */
  learn: (casebook: Casebook, teaching: Teaching) => Learned;
}>;

const builtAnew: BenchParts = {
  indexText: ({ cases }, vocabulary) => buildTextIndex(cases.values(), vocabulary),
  learn: learnCasebook,
};

/** Derives the bench from what was loaded. */
export function buildBench(
  vocabulary: Vocabulary,
  casebook: Casebook,
  { indexText, learn }: BenchParts = builtAnew,
): Bench {
  const reader = buildReader(vocabulary);
  const learned = learn(casebook, { vocabulary, reader });
  const text = indexText(casebook, vocabulary);
  const rowTexts = makeRowTexts();
  numberTexts(rowTexts, learned.table, text.words);
  // The table holds all finished cases and no other: none has to be looked at to be told from the open ones.
  const isFinishedCase = (id: string) => learned.table.rowOfId.has(id);
  return {
    ...learned,
    vocabulary,
    cases: partOf(casebook.cases, isFinishedCase),
    open: partOf(casebook.cases, (id) => !isFinishedCase(id)),
    reader,
    pairs: pairModelOf(vocabulary, learned.model.causes, reader),
    text,
    rowTexts,
  };
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
  const { vocabulary, text, cases, open } = bench;
  const learned = cases.get(kase.id);
  addToTextIndex(text, kase, vocabulary, learned ?? open.get(kase.id));
  if (learned) takeBackLesson(bench, learned, bench);
  if (isFinished(kase)) {
    takeInLesson(bench, kase, bench);
    numberTexts(bench.rowTexts, bench.table, text.words);
    // Set over the earlier version and not taken out first: a map's loop would meet what is taken out and put in again twice.
    cases.set(kase.id, kase);
    open.delete(kase.id);
  } else {
    cases.delete(kase.id);
    open.set(kase.id, kase);
  }
  return bench;
}
