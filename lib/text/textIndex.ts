import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { caseTexts } from "./caseTexts";
import { addText } from "./postings/addText";
import { removeText } from "./postings/removeText";
import { makeWordPostings, type WordPostings } from "./postings/wordPostings";
import { searchOptions } from "./searchOptions";

/**
 * The text index of a casebook: the words of every case, by field. A word that stands in it needs no guessing at typos, and
 * a rare one tells more.
 */
export type TextIndex = Readonly<{ words: WordPostings }>;

/** Builds the text index of all cases given. */
export function buildTextIndex(cases: Iterable<Case>, vocabulary: Vocabulary): TextIndex {
  const index: TextIndex = { words: makeWordPostings(searchOptions.boosts) };
  for (const kase of cases) addToTextIndex(index, kase, vocabulary);
  return index;
}

/**
 * Adds a case, or puts it in place of its earlier version; it is found from the next search on.
 *
 * @param before the earlier version, where there is one, as it was added: it is taken out word for word, so that the index
 * is as if it had never been
 */
export function addToTextIndex(
  { words }: TextIndex,
  kase: Case,
  vocabulary: Vocabulary,
  before?: Case,
): void {
  if (before) removeText(words, before.id, caseTexts(before, vocabulary));
  addText(words, kase.id, caseTexts(kase, vocabulary));
}
