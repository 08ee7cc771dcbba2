import { z } from "zod";
import { blankCause, blankStep, type CaseForm, type CauseRow, type StepRow } from "./caseForm";

/** What somebody who writes a case up asked for. */
export const wishSchema = z.enum([
  "check",
  "save",
  "show-form",
  "show-text",
  "more-steps",
  "more-causes",
  "sum",
]);
export type Wish = z.infer<typeof wishSchema>;

/** A case as a browser sent it: the view it was written in, the form, the Markdown that stands behind it. */
export type SentCase = Readonly<{
  wish: Wish;
  view: "form" | "text";
  form: CaseForm;
  /** The Markdown that the form was made from; empty for a new case. */
  base: string;
  /** The Markdown as typed in the text view. */
  text: string;
}>;

/** More than a case's path may have, so that the fault is found by the schema and said, not cut off in silence. */
const mostRows = 250;
const longestText = 1_000_000;

const text = z
  .string()
  .max(longestText)
  .catch("")
  .transform((words) => words.replaceAll("\r\n", "\n"));
const stepSchema = z.object({
  from: text,
  what: text,
  part: text,
  found: text,
  where: text,
  minutes: text,
  note: text,
  words: text,
});
const causeSchema = z.object({ from: text, cause: text, part: text, role: text });
const sentSchema = z.object({
  wish: wishSchema.catch("check"),
  view: z.enum(["form", "text"]).catch("form"),
  base: text,
  text: text,
  id: text,
  title: text,
  status: text,
  instrument: text,
  maker: text,
  model: text,
  received: text,
  closed: text,
  outcome: text,
  minutes: text,
  charge: text,
  complaint: text,
  arrival: text,
  lessons: text,
  quotedMinutes: text,
  quotedPrice: text,
  story: text,
});

/**
 * Reads the entries of a submitted form. Rows are named `step.0.what`, `cause.0.part`; missing fields are empty, unknown
 * ones and files are passed over.
 *
 * @param entries names and values in any order; of several under one name the last counts
 */
export function readSentCase(entries: Iterable<readonly [string, unknown]>): SentCase {
  const plain = new Map<string, unknown>();
  const steps = new Map<number, Map<string, unknown>>();
  const causes = new Map<number, Map<string, unknown>>();
  for (const [name, value] of entries) {
    const [, list, at, field] = /^(step|cause)\.(\d{1,3})\.([a-z]+)$/.exec(name) ?? [];
    if (list === undefined || at === undefined || field === undefined) {
      plain.set(name, value);
      continue;
    }
    const rows = list === "step" ? steps : causes;
    const row = rows.get(Number(at)) ?? new Map<string, unknown>();
    rows.set(Number(at), row.set(field, value));
  }
  const { wish, view, base, text: typed, ...fields } = sentSchema.parse(Object.fromEntries(plain));
  return {
    wish,
    view,
    base,
    text: typed,
    form: {
      ...fields,
      steps: inOrder(steps).map((row): StepRow => ({ ...blankStep, ...stepSchema.parse(row) })),
      causes: inOrder(causes).map((row): CauseRow => ({ ...blankCause, ...causeSchema.parse(row) })),
    },
  };
}

const inOrder = (rows: ReadonlyMap<number, ReadonlyMap<string, unknown>>) =>
  [...rows]
    .sort(([a], [b]) => a - b)
    .slice(0, mostRows)
    .map(([, row]) => Object.fromEntries(row));
