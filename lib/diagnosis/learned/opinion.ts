import type { LabelledRows } from "../../similarity/learned/feature";

/** What several ways of judging say about a row: for each the logarithms of its probabilities of the classes. */
export type Opinions = (row: number) => readonly Float64Array[];

/**
 * Ways of judging that are learned together. Learning has two steps: `learn` settles what takes long, and what it returns
 * counts over rows that may be more or fewer than those. How many opinions there are depends on the features' kinds alone.
 */
export type Judge = Readonly<{
  learn: (data: LabelledRows, rows: Int32Array) => (rows: Int32Array) => Opinions;
}>;
