import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { caseTexts } from "./caseTexts";
import { fieldBoosts } from "./fieldBoosts";
import { addText } from "./postings/addText";
import { removeText } from "./postings/removeText";
import { makeWordPostings, type WordPostings } from "./postings/wordPostings";
import { putInSearchIndex, type SearchIndex, startSearchIndex } from "./searchIndex";

/**
 * The text of a casebook, twice indexed: by its words, for telling how alike cases are and which words the casebook knows;
 * and for being searched, which is filled only when somebody searches.
 */
export type TextIndex = Readonly<{ words: WordPostings; search: SearchIndex }>;

/** Builds the text index of all cases given. */
export function buildTextIndex(cases: Iterable<Case>, vocabulary: Vocabulary): TextIndex {
  const byId = new Map<string, Case>();
  const words = makeWordPostings(fieldBoosts);
  for (const kase of cases) {
    addText(words, kase.id, caseTexts(kase, vocabulary));
    byId.set(kase.id, kase);
  }
  return { words, search: startSearchIndex(byId, vocabulary) };
}

/**
 * Adds a case, or puts it in place of its earlier version; it is found from the next search on.
 *
 * @param before the earlier version, where there is one, as it was added: it is taken out word for word, so that the index
 * is as if it had never been
 */
export function addToTextIndex(
  { words, search }: TextIndex,
  kase: Case,
  vocabulary: Vocabulary,
  before?: Case,
): void {
  if (before) removeText(words, before.id, caseTexts(before, vocabulary));
  addText(words, kase.id, caseTexts(kase, vocabulary));
  putInSearchIndex(search, kase, before);
}
