import type { Case } from "../casebook/caseFile";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { eachFacet, type FacetName, facetNames, facetValues } from "./facets";

/** A value of a facet that some case has. */
export type FacetValue = Readonly<{ facet: FacetName; value: string }>;

/** Every value met so far; its place is its code. Never more than the casebooks loaded have values. */
const values: FacetValue[] = [];
const codes = eachFacet(() => new Map<string, number>());
const remembered = new WeakMap<Case, readonly number[]>();

/**
 * The facet values of a case as whole numbers, which are counted and compared far faster than words. They are remembered
 * with the case, which never changes once read: a changed file is another case, and so are all when the vocabulary changes.
 *
 * @returns codes in the order of `facetNames`; see `facetValueOf`
 */
export function facetCodes(kase: Case, vocabulary: Vocabulary): readonly number[] {
  const known = remembered.get(kase);
  if (known !== undefined) return known;
  const own = facetValues(kase, vocabulary);
  const coded = facetNames.flatMap((facet) => own[facet].map((value) => giveCode(facet, value)));
  remembered.set(kase, coded);
  return coded;
}

/** The code of a value; undefined where no case ever had it. */
export const findFacetCode = (facet: FacetName, value: string) => codes[facet].get(value);

/** The value that a code stands for; undefined for a number that is no code. */
export const facetValueOf = (code: number): FacetValue | undefined => values[code];

/** One more than the highest code. */
export const facetCodeCount = () => values.length;

function giveCode(facet: FacetName, value: string): number {
  const known = codes[facet].get(value);
  if (known !== undefined) return known;
  codes[facet].set(value, values.length);
  return values.push({ facet, value }) - 1;
}
