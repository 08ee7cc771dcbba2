import { z } from "zod";

/** An id: lower-case words joined by hyphens, at most 64 characters; it is also a path segment, so nothing else is let in. */
export const idSchema = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case words joined by hyphens, such as casing-dented")
  .max(64);

/** The kinds of entry that an id can name. */
export type EntryKind = "instruments" | "parts" | "checks" | "causes" | "repairs" | "cautions";

/** An id that names an entry of one kind; `names` goes into the published schema, where editors are offered the ids there are. */
export const idOf = (names: EntryKind) => idSchema.meta({ names });

/** Other ways of saying it at the bench: synonyms, abbreviations, usual misspellings. */
export const synonymsSchema = z.array(z.string().trim().min(1).max(80)).default([]);

/** Short notes in the bench's own words, as a tired technician would type them. */
export const toldAsSchema = z.array(z.string().trim().min(8).max(120)).default([]);

/** Where a fact of the trade comes from; `common practice` when no publication is named. */
export const sourceSchema = z.string().trim().min(3).default("common practice");

/** Prose of the handbook: a few plain sentences. */
export const proseSchema = z.string().trim().min(20).max(1200);

/**
 * How often a finding goes with a cause, in words.
 * Their numbers stand in lib/diagnosis/frequencyWords.ts.
 */
export const frequencySchema = z.enum(["always", "usually", "often", "sometimes", "rarely", "never"]);
export type Frequency = z.infer<typeof frequencySchema>;

/** Risk classes: 0 look, listen, ask; 1 handle; 2 take apart; 3 free what does not want to come; 4 cannot be undone. */
export const riskSchema = z.int().min(0).max(4);

/** Whole or part minutes at the bench, at most two working weeks. */
export const minutesSchema = z.number().min(0).max(4800);
