import { z } from "zod";
import { idOf, idSchema, minutesSchema } from "../vocabulary/words";
import { daySchema } from "./day";
import { partRefSchema } from "./partRef";
import { mostPhotos, photoSchema } from "./photos/photo";
import { stepSchema } from "./step";

const moneySchema = z.number().min(0).max(1_000_000);
const lineSchema = z.string().trim().min(1).max(300);

/** Why it did not work, on which part, and in which role. */
export const caseCauseSchema = z.looseObject({
  cause: idOf("causes"),
  part: partRefSchema.optional(),
  role: z.enum(["root", "contributing", "brought-on"]),
  note: z.string().trim().max(2000).optional(),
});

/** What a repair did to the instrument that it should not have, how, by which step of the path (from 1), and who paid for it. */
const harmSchema = z.looseObject({
  repair: idOf("repairs"),
  part: partRefSchema.optional(),
  what: lineSchema,
  how: lineSchema.optional(),
  step: z.int().min(1).max(200).optional(),
  minutes: minutesSchema.default(0),
  paidBy: z.enum(["shop", "customer"]),
});

/**
 * A repair that was chosen, before it was done: for which cause, after which case's plan (`from`), and which checks stood
 * beside it to be made first, as they were seen and as they were ticked.
 */
const plannedSchema = z.looseObject({
  repair: idOf("repairs"),
  part: partRefSchema.optional(),
  for: idOf("causes").optional(),
  from: idSchema.optional(),
  seen: z.array(idOf("checks")).max(20).optional(),
  ticked: z.array(idOf("checks")).max(20).optional(),
});

/** What the customer was told, and what like cases said of it at that time: minutes for half, four in five, 19 in 20 of them. */
const quotedSchema = z.looseObject({
  minutes: minutesSchema,
  price: moneySchema,
  on: daySchema.optional(),
  p50: minutesSchema.optional(),
  p80: minutesSchema.optional(),
  p95: minutesSchema.optional(),
});

/** The clock of a job in hand: minutes that it holds, and since when it runs on, where it does. */
const clockSchema = z.looseObject({
  minutes: minutesSchema,
  since: z.iso.datetime({ error: "a time of day in UTC, such as 2026-03-09T14:30:00Z" }).optional(),
});

/** A past case that this job looked like: what was different, and whether its lesson held here. */
const lookedLikeSchema = z.looseObject({
  case: idSchema,
  different: lineSchema.optional(),
  lesson: z.enum(["held", "failed"]).optional(),
});

/**
 * The front matter of a case file: an open bench sheet (`status: open`) or a finished case.
 * Fields that it does not name are kept as they are. The Markdown below it is the story.
 */
export const caseFieldsSchema = z.looseObject({
  id: idSchema,
  title: z.string().trim().min(3).max(120),
  status: z.enum(["open", "closed"]),
  demo: z.boolean().default(false),
  instrument: idOf("instruments"),
  maker: z.string().trim().max(80).optional(),
  model: z.string().trim().max(80).optional(),
  received: daySchema,
  closed: daySchema.optional(),
  complaint: z.string().trim().min(1).max(2000),
  arrival: z.array(lineSchema).default([]),
  /** The state on arrival in pictures; they lie in `photos/` under the case's id. */
  photos: z.array(photoSchema).max(mostPhotos).optional(),
  firstThought: idOf("causes").optional(),
  plan: z.array(plannedSchema).max(20).optional(),
  path: z.array(stepSchema).max(200).default([]),
  clock: clockSchema.optional(),
  causes: z.array(caseCauseSchema).max(12).default([]),
  outcome: z.enum(["fixed", "improved", "not-fixed", "declined"]).optional(),
  minutes: minutesSchema.optional(),
  quoted: quotedSchema.optional(),
  charge: moneySchema.optional(),
  swallowed: z.looseObject({ minutes: minutesSchema, money: moneySchema }).optional(),
  harms: z.array(harmSchema).max(20).default([]),
  /** Why the job was closed as fixed without the proof that its repairs ask for. */
  unproven: lineSchema.optional(),
  like: z.array(lookedLikeSchema).max(12).optional(),
  lessons: z.array(lineSchema).max(10).default([]),
});

/** What a finished case must say beyond a bench sheet. */
export const caseSchema = caseFieldsSchema.superRefine((fields, context) => {
  const demand = (holds: boolean, path: string, message: string) => {
    if (!holds) context.addIssue({ code: "custom", path: [path], message, input: fields[path] });
  };
  if (fields.closed !== undefined) {
    demand(fields.closed >= fields.received, "closed", "a day no earlier than the day it was received");
  }
  if (fields.status === "open") return;
  demand(
    fields.closed !== undefined,
    "closed",
    "the day the job was closed (or status: open while it lasts)",
  );
  demand(fields.outcome !== undefined, "outcome", "how it ended: fixed, improved, not-fixed or declined");
  demand(fields.minutes !== undefined, "minutes", "the minutes that the job took");
  demand(
    fields.outcome === "declined" || fields.causes.some(({ role }) => role === "root"),
    "causes",
    "at least one cause with role: root",
  );
});

export type CaseFields = z.infer<typeof caseFieldsSchema>;
export type CaseCause = z.infer<typeof caseCauseSchema>;

/** A case as held in memory: its front matter, its story and the file it came from. */
export type Case = CaseFields & Readonly<{ story: string; file: string }>;
