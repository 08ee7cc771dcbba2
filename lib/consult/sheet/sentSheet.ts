import { z } from "zod";
import type { CaseForm } from "../../casebook/caseForm";
import { readSentCase } from "../../casebook/sentCase";

/** What somebody at an open job asked for: a step logged, words read into steps, the last step taken back, and so on. */
const wishSchema = z.enum(["log", "say", "undo", "edit", "close", "restore", "mine"]);

const text = z
  .string()
  .max(1_000_000)
  .catch("")
  .transform((words) => words.replaceAll("\r\n", "\n"));
const line = text.transform((words) => words.trim());

const sentSchema = z.object({
  wish: wishSchema.catch("edit"),
  sheet: line,
  /** The version that stood on the page: its text and the hash of its file. */
  base: text,
  baseHash: line,
  /** A whole version of one's own, to be put in place of another's. */
  text,
  /** The number of an earlier version. */
  version: z.coerce.number().int().positive().catch(0),
  words: line,
  harmWhat: line,
  harmMinutes: line,
  harmPaidBy: z.enum(["shop", "customer"]).catch("shop"),
  unproven: line,
  swallowedMinutes: line,
  swallowedMoney: line,
});

/** A wish about an open job as a browser sent it. */
export type SentSheet = z.infer<typeof sentSchema> &
  Readonly<{
    form: CaseForm;
    /** The names that were sent: a form that shows but some of a case's fields says nothing of the others. */
    named: ReadonlySet<string>;
    /** Proofs that were ticked, by their keys. */
    proofs: readonly string[];
  }>;

/**
 * Reads the entries of a submitted form about an open job. Fields of the case are named as in `readSentCase`; missing ones
 * are empty, unknown ones are passed over.
 *
 * @param entries names and values in any order; of several under one name the last counts, but for `proof`
 */
export function readSentSheet(entries: Iterable<readonly [string, unknown]>): SentSheet {
  const list = [...entries];
  const sent = sentSchema.parse(Object.fromEntries(list));
  return {
    ...sent,
    form: readSentCase(list.filter(([name]) => name !== "wish")).form,
    named: new Set(list.map(([name]) => name)),
    proofs: list.flatMap(([name, value]) => (name === "proof" && typeof value === "string" ? [value] : [])),
  };
}
