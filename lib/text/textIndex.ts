import MiniSearch from "minisearch";
import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { type CaseDocument, caseDocument } from "./caseDocument";
import { searchOptions } from "./searchOptions";

/**
 * The text index of a casebook, with its terms and in how many cases each stands. A word that stands in it needs no
 * guessing at typos, and a rare one tells more.
 */
export type TextIndex = Readonly<{ search: MiniSearch<CaseDocument>; terms: Map<string, number> }>;

/** Builds the text index of all cases given. */
export function buildTextIndex(cases: Iterable<Case>, vocabulary: Vocabulary): TextIndex {
  const index: TextIndex = { search: new MiniSearch<CaseDocument>(searchOptions), terms: new Map() };
  for (const kase of cases) addToTextIndex(index, kase, vocabulary);
  return index;
}

/**
 * Adds a case, or puts it in place of its earlier version; it is found from the next search on.
 *
 * @param before the earlier version, where there is one
 */
export function addToTextIndex(
  { search, terms }: TextIndex,
  kase: Case,
  vocabulary: Vocabulary,
  before?: Case,
): void {
  const document = caseDocument(kase, vocabulary);
  if (search.has(document.id)) search.replace(document);
  else search.add(document);
  const count = (counted: CaseDocument, by: 1 | -1) => {
    for (const term of termsOf(counted)) terms.set(term, (terms.get(term) ?? 0) + by);
  };
  count(document, 1);
  if (before) count(caseDocument(before, vocabulary), -1);
}

function termsOf(document: CaseDocument): Set<string> {
  const words = Object.values(document).flatMap((text) => searchOptions.tokenize(text));
  return new Set(words.flatMap((word) => searchOptions.processTerm(word) ?? []));
}
