import type {
  Attribute,
  FindingKey,
  FindingsAttribute,
  NominalAttribute,
  NumericAttribute,
  OrdinalAttribute,
  TaxonomyAttribute,
  TextAttribute,
} from "./attribute";

/** An attribute with a list of values, held as codes. */
export type CodedAttribute = NominalAttribute | OrdinalAttribute | TaxonomyAttribute;

/** Codes by row: 0 is unknown, code c is values[c - 1]; one byte a row up to 255 values, two beyond. */
export interface CodedColumn {
  readonly kind: "coded";
  readonly attribute: CodedAttribute;
  readonly values: readonly string[];
  readonly codeOfValue: ReadonlyMap<string, number>;
  codes: Uint8Array | Uint16Array;
  /** Number of live rows by code. */
  readonly counts: Int32Array;
}

/** Bounds by row, equal for a single number, NaN where unknown. */
export interface NumericColumn {
  readonly kind: "numeric";
  readonly attribute: NumericAttribute;
  low: Float64Array;
  high: Float64Array;
  knownCount: number;
  /** Whether an interval with an infinite bound was ever written. */
  hasOpen: boolean;
}

/** The rows that know one finding key, ascending, and the code of the outcome beside each (from 1; 0 for a row removed since). */
export interface PostingList {
  readonly key: FindingKey;
  readonly codeOfOutcome: ReadonlyMap<string, number>;
  rows: Int32Array;
  outcomes: Uint8Array;
  length: number;
  /** Number of live rows by outcome code. */
  readonly counts: Int32Array;
}

/** One posting list a key, in the order of the schema. */
export interface FindingsColumn {
  readonly kind: "findings";
  readonly attribute: FindingsAttribute;
  readonly postings: ReadonlyMap<string, PostingList>;
}

/** Nothing is stored for text: its scores come with the query. */
export interface TextColumn {
  readonly kind: "text";
  readonly attribute: TextAttribute;
}

/** How a table holds one attribute. */
export type Column = CodedColumn | NumericColumn | FindingsColumn | TextColumn;

/** Code from 1 by value, in the order given. */
function codesFromOne(values: readonly string[]): Map<string, number> {
  return new Map(values.map((value, i) => [value, i + 1]));
}

/** The values that a coded attribute can take, in the order of the schema. */
export function listValues(attribute: CodedAttribute): readonly string[] {
  switch (attribute.kind) {
    case "nominal":
      return attribute.values;
    case "ordinal":
      return attribute.ranks;
    case "taxonomy":
      return attribute.taxonomy.ids;
  }
}

function makePostingList(key: FindingKey): PostingList {
  return {
    key,
    codeOfOutcome: codesFromOne(key.outcomes),
    rows: new Int32Array(0),
    outcomes: new Uint8Array(0),
    length: 0,
    counts: new Int32Array(key.outcomes.length + 1),
  };
}

/**
 * An empty column for an attribute that `checkAttributes` has passed.
 *
 * @param capacity rows to make room for at once.
 */
export function makeColumn(attribute: Attribute, capacity: number): Column {
  switch (attribute.kind) {
    case "findings":
      return {
        kind: "findings",
        attribute,
        postings: new Map(attribute.keys.map((key) => [key.key, makePostingList(key)])),
      };
    case "text":
      return { kind: "text", attribute };
    case "numeric": {
      const low = new Float64Array(capacity).fill(Number.NaN);
      return { kind: "numeric", attribute, low, high: low.slice(), knownCount: 0, hasOpen: false };
    }
    default: {
      const values = listValues(attribute);
      return {
        kind: "coded",
        attribute,
        values,
        codeOfValue: codesFromOne(values),
        codes: values.length <= 255 ? new Uint8Array(capacity) : new Uint16Array(capacity),
        counts: new Int32Array(values.length + 1),
      };
    }
  }
}
