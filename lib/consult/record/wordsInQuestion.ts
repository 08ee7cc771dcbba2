import type { Case } from "../../casebook/caseFile";
import { whileUnchanged } from "../../casebook/whileUnchanged";
import type { FrequencyWord } from "../../diagnosis/frequencyRange";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { type JudgedTell, judgeTells } from "./judgeTells";
import { seenFindings } from "./seenFindings";

/** A word that is clearly off, with the one that the cases speak for. */
export type WordInQuestion = JudgedTell & Readonly<{ proposed: FrequencyWord }>;

/** The words that the cases contradict, and how many words they had enough to say about. */
export type WordsInQuestion = Readonly<{ off: readonly WordInQuestion[]; judged: number; told: number }>;

/**
 * Sets all of the handbook's words beside the cases.
 *
 * @returns those that are off, the ones with the most cases first; ties in the handbook's order
 */
export function wordsInQuestion(cases: Iterable<Case>, vocabulary: Vocabulary): WordsInQuestion {
  const seen = seenFindings(cases, vocabulary);
  const all = [...vocabulary.causes.values()].flatMap((cause) => judgeTells(cause, seen.get(cause.id)));
  return {
    off: all
      .flatMap((one) => (one.verdict.kind === "off" ? [{ ...one, proposed: one.verdict.proposed }] : []))
      .sort((a, b) => b.looked - a.looked),
    judged: all.filter(({ verdict }) => verdict.kind !== "few").length,
    told: all.length,
  };
}

/** The same of all cases of a casebook, remembered until one is put in. */
export const wordsOfCasebook = whileUnchanged(wordsInQuestion);
