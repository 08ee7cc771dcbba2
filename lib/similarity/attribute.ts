import type { Taxonomy } from "./taxonomy";

interface Weighted {
  /** Unique among the attributes of a table. */
  readonly name: string;
  /** Its say in the global similarity: finite, 0 or more, no unit; only ratios between weights matter. */
  readonly weight: number;
}

/** Values without an order. `alike` (0..1, and 1 of a value with itself) says how alike two of them are; default: the same or not. */
export interface NominalAttribute extends Weighted {
  readonly kind: "nominal";
  readonly values: readonly string[];
  readonly alike?: (queryValue: string, caseValue: string) => number;
}

/** Values on a scale; `ranks` lists them from one end to the other. */
export interface OrdinalAttribute extends Weighted {
  readonly kind: "ordinal";
  readonly ranks: readonly string[];
}

/** Numbers and intervals; at a distance of `tolerance` (over 0, in `unit`) nothing is left of the similarity. */
export interface NumericAttribute extends Weighted {
  readonly kind: "numeric";
  readonly tolerance: number;
  readonly unit?: string;
}

/** Ids of a taxonomy. */
export interface TaxonomyAttribute extends Weighted {
  readonly kind: "taxonomy";
  readonly taxonomy: Taxonomy;
}

/** One thing that may have been found out, with the outcomes it can have; on an `ordered` scale they stand from end to end. */
export interface FindingKey {
  readonly key: string;
  readonly weight: number;
  readonly outcomes: readonly string[];
  readonly ordered: boolean;
}

/** Many things of which a case knows few; each key counts as an attribute of its own. */
export interface FindingsAttribute {
  readonly kind: "findings";
  readonly name: string;
  readonly keys: readonly FindingKey[];
}

/** Prose; the caller scores every row against the query (0..1) and hands the scores in with the query. */
export interface TextAttribute extends Weighted {
  readonly kind: "text";
}

/** What two cases can be compared by, told apart by `kind`. */
export type Attribute =
  | NominalAttribute
  | OrdinalAttribute
  | NumericAttribute
  | TaxonomyAttribute
  | FindingsAttribute
  | TextAttribute;
