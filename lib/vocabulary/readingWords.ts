import { z } from "zod";
import { idSchema } from "./words";

const phrasesSchema = z.array(z.string().trim().min(1)).default([]);

/**
 * The small words by which shop language is read: what denies, what doubts, what points at the siblings, how places are counted.
 * Kept as content like everything else that a technician might say.
 */
export const readingWordsSchema = z.strictObject({
  deniesWhatFollows: phrasesSchema,
  deniesWhatPrecedes: phrasesSchema,
  doubts: phrasesSchema,
  longAgo: phrasesSchema,
  /** Says that what follows is what somebody believes of the trouble, not what was seen: "owner blames the pads". */
  beliefs: phrasesSchema,
  endsScope: phrasesSchema,
  others: phrasesSchema,
  all: phrasesSchema,
  fillers: phrasesSchema,
  /** Joins numbered parts: "1st and 3rd". */
  joinsParts: phrasesSchema,
  /** Joins further things to a denial: "no dents, bends or lime". */
  joinsDenied: phrasesSchema,
  /** Says that a thing is as it should be: "spring fine". */
  sound: phrasesSchema,
  /** A bare answer that says it is so. */
  affirms: phrasesSchema,
  /** Words after a number that make it a measure: thou, in, mm. */
  units: phrasesSchema,
  /** Words that count places: first, 1st, top ... to the number they mean. */
  numbers: z.record(z.string(), z.int().min(1).max(12)).default({}),
  /** Bench short forms to the words that they stand for. */
  shortForms: z.record(z.string(), z.string()).default({}),
  /** Words that join a part to the place it was tried in: "piston 3 in casing 1". */
  swapJoins: phrasesSchema,
  swapResults: z
    .strictObject({ free: phrasesSchema, drags: phrasesSchema, sticks: phrasesSchema })
    .default({ free: [], drags: [], sticks: [] }),
  /** How far a part was turned in its place to the words that say so, the ones to be shown first: "half": turned half round. */
  swapTurns: z.record(idSchema, z.array(z.string().trim().min(1)).min(1)).default({}),
});
export type ReadingWords = z.infer<typeof readingWordsSchema>;
