import { z } from "zod";
import type { CaseForm } from "../../casebook/form/caseForm";
import { readSentCase } from "../../casebook/form/sentCase";
import { photoFileSchema } from "../../casebook/photos/photo";

/** What somebody at an open job asked for: a step logged, words read into steps, the last step taken back, and so on. */
const wishSchema = z.enum([
  "log",
  "say",
  "undo",
  "minutes",
  "clock",
  "quote",
  "plan",
  "unplan",
  "look",
  "take-over",
  "edit",
  "close",
  "photos",
  "caption",
  "photo-off",
  "photo-back",
  "readings",
  "restore",
  "mine",
]);

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
  /** A repair to be planned, with its cause; the case whose plan is taken over; a place in the plan, from 0. */
  repair: line,
  from: line,
  at: z.coerce.number().int().min(0).catch(-1),
  clock: z.enum(["start", "stop", "set", "off"]).catch("set"),
  clockMinutes: line,
  /** What like cases said when the quote was given. */
  p50: line,
  p80: line,
  p95: line,
  /** A photo by its name, and what it shows. */
  photo: photoFileSchema.or(z.literal("")).catch(""),
  caption: line,
  /** Gauge readings as JSON, see \`readingsSchema\`. */
  readings: text,
  harmWhat: line,
  harmHow: line,
  /** The number of the step that did it, from 1; empty for the one being logged. */
  harmStep: line,
  harmMinutes: line,
  harmPaidBy: z.enum(["shop", "customer"]).catch("shop"),
  unproven: line,
  swallowedMinutes: line,
  swallowedMoney: line,
});

/** What is said of a case that a job looked like. */
const lookedLikeSchema = z.object({
  case: line,
  different: line,
  lesson: z.enum(["held", "failed", ""]).catch(""),
});

/** A wish about an open job as a browser sent it. */
export type SentSheet = z.infer<typeof sentSchema> &
  Readonly<{
    form: CaseForm;
    /** The names that were sent: a form that shows but some of a case's fields says nothing of the others. */
    named: ReadonlySet<string>;
    /** Proofs that were ticked, by their keys. */
    proofs: readonly string[];
    /** Checks that stood beside a planned repair, and those that were ticked. */
    seen: readonly string[];
    ticked: readonly string[];
    like: readonly z.infer<typeof lookedLikeSchema>[];
  }>;

/** The names of which every value counts. */
const lists = ["proof", "seen", "ticked"] as const;

/**
 * Reads the entries of a submitted form about an open job. Fields of the case are named as in `readSentCase`; missing ones
 * are empty, unknown ones are passed over.
 *
 * @param entries names and values in any order; of several under one name the last counts, but for `proof`, `seen` and `ticked`
 */
export function readSentSheet(entries: Iterable<readonly [string, unknown]>): SentSheet {
  const list = [...entries];
  const sent = sentSchema.parse(Object.fromEntries(list));
  const [proofs, seen, ticked] = lists.map((wanted) =>
    list.flatMap(([name, value]) => (name === wanted && typeof value === "string" ? [value] : [])),
  );
  return {
    ...sent,
    form: readSentCase(list.filter(([name]) => name !== "wish")).form,
    named: new Set(list.map(([name]) => name)),
    proofs: proofs ?? [],
    seen: seen ?? [],
    ticked: ticked ?? [],
    like: likeRows(list),
  };
}

/** The rows named `like.0.case`, `like.0.different`, `like.0.lesson`, in their order; those without a case are passed over. */
function likeRows(list: readonly (readonly [string, unknown])[]): z.infer<typeof lookedLikeSchema>[] {
  const rows = new Map<string, Map<string, unknown>>();
  for (const [name, value] of list) {
    const [, at, field] = /^like\.(\d{1,2})\.([a-z]+)$/.exec(name) ?? [];
    if (at === undefined || field === undefined) continue;
    rows.set(at, (rows.get(at) ?? new Map<string, unknown>()).set(field, value));
  }
  return [...rows]
    .sort(([a], [b]) => Number(a) - Number(b))
    .map(([, row]) => lookedLikeSchema.parse(Object.fromEntries(row)))
    .filter((row) => row.case !== "");
}
