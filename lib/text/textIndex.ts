import MiniSearch from "minisearch";
import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { type CaseDocument, caseDocument } from "./caseDocument";
import { searchOptions } from "./searchOptions";

/** The text index of a casebook, with the set of its terms: a word that stands in it needs no guessing at typos. */
export type TextIndex = Readonly<{ search: MiniSearch<CaseDocument>; terms: Set<string> }>;

/** Builds the text index of all cases given. */
export function buildTextIndex(cases: Iterable<Case>, vocabulary: Vocabulary): TextIndex {
  const index: TextIndex = { search: new MiniSearch<CaseDocument>(searchOptions), terms: new Set() };
  for (const kase of cases) addToTextIndex(index, kase, vocabulary);
  return index;
}

/** Adds a case, or puts it in place of its earlier version; it is found from the next search on. */
export function addToTextIndex({ search, terms }: TextIndex, kase: Case, vocabulary: Vocabulary): void {
  const document = caseDocument(kase, vocabulary);
  if (search.has(document.id)) search.replace(document);
  else search.add(document);
  for (const text of Object.values(document)) {
    for (const word of searchOptions.tokenize(text)) {
      const term = searchOptions.processTerm(word);
      if (term !== null) terms.add(term);
    }
  }
}
