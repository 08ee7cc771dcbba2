import MiniSearch from "minisearch";
import type { Case } from "../casebook/caseFile";
import { partOf } from "../casebook/lateMap";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { type CaseDocument, caseDocument } from "./caseDocument";
import { searchOptions } from "./searchOptions";

/**
 * The index by which cases are searched, filled when it is first asked or beforehand by `warmSearchIndex`: it takes longer to
 * fill than all the rest of a start, and no consultation needs it.
 */
export type SearchIndex = Readonly<{
  documents: MiniSearch<CaseDocument>;
  vocabulary: Vocabulary;
  /** The cases that are not in it yet, by id. */
  waiting: Map<string, Case>;
}>;

/** Cases added between two pauses. Chosen: they take some five milliseconds. */
const casesATurn = 25;

/** Makes the index of all cases given, by id, none of them in it yet. */
export function startSearchIndex(cases: ReadonlyMap<string, Case>, vocabulary: Vocabulary): SearchIndex {
  return {
    documents: new MiniSearch<CaseDocument>(searchOptions),
    vocabulary,
    waiting: partOf(cases, () => true),
  };
}

/**
 * Puts a case in, or in place of its earlier version; where that is still waiting, the new one waits instead.
 *
 * @param before the earlier version, where there is one, as it was put in: it is taken out word for word, so that the index
 * is as if it had never been
 */
export function putInSearchIndex(
  { documents, vocabulary, waiting }: SearchIndex,
  kase: Case,
  before?: Case,
): void {
  if (waiting.has(kase.id)) {
    waiting.set(kase.id, kase);
    return;
  }
  // Leaving the taking out to the library's own time would count the former's words until then: a common word could score below 0.
  if (before) documents.remove(caseDocument(before, vocabulary));
  documents.add(caseDocument(kase, vocabulary));
}

/** Puts in what waits, and gives the full index. */
export function fillSearchIndex(index: SearchIndex): MiniSearch<CaseDocument> {
  addWaiting(index, index.waiting.size);
  return index.documents;
}

/**
 * Puts in what waits, a few cases at a time, so that whatever else there is to do gets its turn.
 *
 * @param pause lets others have their turn
 * @returns when nothing waits any more, were it that somebody asked meanwhile
 */
export async function warmSearchIndex(index: SearchIndex, pause: () => Promise<unknown>): Promise<void> {
  while (index.waiting.size > 0) {
    addWaiting(index, casesATurn);
    await pause();
  }
}

function addWaiting({ documents, vocabulary, waiting }: SearchIndex, most: number): void {
  for (const [id, kase] of waiting) {
    if (most <= 0) return;
    most -= 1;
    documents.add(caseDocument(kase, vocabulary));
    waiting.delete(id);
  }
}
