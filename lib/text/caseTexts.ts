import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { caseDocument } from "./caseDocument";
import { searchOptions } from "./searchOptions";

/** A case as it is indexed: one string a field, in the order of `searchOptions.fields`. */
export function caseTexts(kase: Case, vocabulary: Vocabulary): string[] {
  const document = caseDocument(kase, vocabulary);
  return searchOptions.fields.map((field) => document[field]);
}
