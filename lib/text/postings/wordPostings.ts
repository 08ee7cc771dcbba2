/** Where one term stands. */
export interface TermPostings {
  /** Key and count by turns, keys ascending; a key is the text's number x the number of fields + the field's number. */
  entries: Int32Array;
  /** How many keys are in use; `entries` may be longer. */
  length: number;
  /** In how many texts the term stands, in whatever field. */
  texts: number;
  /** In how many texts it stands in each field. */
  readonly textsByField: number[];
}

/**
 * Texts of several fields, by their words: for each term the texts that hold it and how often. Texts are numbered from 0;
 * the number of one taken out is given to the next that comes. Written by `addText` and `removeText` only.
 */
export interface WordPostings {
  /** What a word counts in each field, over 0; as many as there are fields. */
  readonly boosts: readonly number[];
  /** The texts' ids by number; undefined where one was taken out. */
  readonly ids: (string | undefined)[];
  readonly numberOf: Map<string, number>;
  /** Numbers to give out again. */
  readonly free: number[];
  /** Only terms that stand in some text. */
  readonly terms: Map<string, TermPostings>;
  /** How many different words a field of a text has, by key; may be longer than there are keys. */
  lengths: Uint32Array;
  /** The sums of `lengths` by field. */
  readonly lengthTotals: number[];
}

/**
 * Makes postings without a text.
 *
 * @param boosts what a word counts in each field, over 0
 */
export function makeWordPostings(boosts: readonly number[]): WordPostings {
  return {
    boosts,
    ids: [],
    numberOf: new Map(),
    free: [],
    terms: new Map(),
    lengths: new Uint32Array(16 * boosts.length),
    lengthTotals: boosts.map(() => 0),
  };
}
