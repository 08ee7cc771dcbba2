import type { Taxonomy } from "../similarity/taxonomy";
import type { Cause } from "./cause";
import type { Caution } from "./caution";
import type { Check } from "./check";
import type { Instrument } from "./instrument";
import type { OpinionWeights } from "./opinionWeights";
import type { Part } from "./part";
import type { ReadingWeights } from "./readingWeights";
import type { ReadingWords } from "./readingWords";
import type { Repair } from "./repair";
import type { Saying } from "./saying";

/** The trade's knowledge as loaded from content: every entry by its id, in the order of the files. */
export type Vocabulary = Readonly<{
  instruments: ReadonlyMap<string, Instrument>;
  parts: ReadonlyMap<string, Part>;
  checks: ReadonlyMap<string, Check>;
  causes: ReadonlyMap<string, Cause>;
  repairs: ReadonlyMap<string, Repair>;
  cautions: ReadonlyMap<string, Caution>;
  words: ReadingWords;
  /** Notes with what they mean, from which reading is learned. */
  sayings: readonly Saying[];
  /** Whole notes by the id of the cause that was behind them. */
  causeNotes: ReadonlyMap<string, readonly string[]>;
  weights: OpinionWeights;
  readingWeights: ReadingWeights;
  instrumentTree: Taxonomy;
  partTree: Taxonomy;
}>;
