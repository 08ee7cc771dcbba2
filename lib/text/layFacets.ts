import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { facetCodes } from "./facetCodes";

/** The facet codes of a list of cases one after another: case number `at` has those from `starts[at]` to before `starts[at + 1]`. */
export type LaidFacets = Readonly<{ starts: Int32Array; codes: Int32Array }>;

/** Lays the facet codes of cases out in two long arrays, which are counted several times as fast as lists of their own. */
export function layFacets(cases: readonly Case[], vocabulary: Vocabulary): LaidFacets {
  const starts = new Int32Array(cases.length + 1);
  const lists = cases.map((kase) => facetCodes(kase, vocabulary));
  for (const [at, { length }] of lists.entries()) starts[at + 1] = (starts[at] ?? 0) + length;
  const codes = new Int32Array(starts[cases.length] ?? 0);
  for (const [at, list] of lists.entries()) codes.set(list, starts[at]);
  return { starts, codes };
}
