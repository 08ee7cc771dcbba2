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
 * @param before the earlier version, where there is one, as it was added: it is taken out word for word, so that the index
 * is as if it had never been
 */
export function addToTextIndex(
  { search, terms }: TextIndex,
  kase: Case,
  vocabulary: Vocabulary,
  before?: Case,
): void {
  const document = caseDocument(kase, vocabulary);
  const former = before && caseDocument(before, vocabulary);
  // Leaving the taking out to the library's own time would count the former's words until then: a common word could score below 0.
  if (former) search.remove(former);
  search.add(document);
  const count = (counted: CaseDocument, by: 1 | -1) => {
    for (const term of termsOf(counted)) terms.set(term, (terms.get(term) ?? 0) + by);
  };
  count(document, 1);
  if (former) count(former, -1);
}

function termsOf({ id: _, ...texts }: CaseDocument): Set<string> {
  const words = Object.values(texts).flatMap((text) => searchOptions.tokenize(text));
  return new Set(words.flatMap((word) => searchOptions.processTerm(word) ?? []));
}
