import { sayStep } from "../sayStep";
import { groupOf, lineOf, linesIn, linesOf, listOf, numberIn, textOf, wordsIn } from "./fieldTexts";

/** One step as a form shows it, all words. */
export type StepRow = Readonly<{
  /** Place of this step in the path that the form was made from; empty for a step added in the form. */
  from: string;
  /** `check ID` or `repair ID`; `kept` for a step that the form cannot show; empty where nothing was chosen. */
  what: string;
  part: string;
  /** Outcome of the check, or result of the repair. */
  found: string;
  where: string;
  minutes: string;
  note: string;
  /** What a kept step holds, to be read only. */
  words: string;
}>;

/** One cause as a form shows it. */
export type CauseRow = Readonly<{ from: string; cause: string; part: string; role: string }>;

const wordFields = [
  "id",
  "title",
  "status",
  "instrument",
  "maker",
  "model",
  "received",
  "closed",
  "outcome",
] as const;
const numberFields = ["minutes", "charge"] as const;
const lineFields = ["arrival", "lessons"] as const;
type PlainField = (typeof wordFields | typeof numberFields | typeof lineFields)[number];

/** A case as a form shows it: every field a text, lists a line an entry. */
export type CaseForm = Readonly<
  Record<PlainField | "complaint" | "quotedMinutes" | "quotedPrice" | "story", string> & {
    steps: readonly StepRow[];
    causes: readonly CauseRow[];
  }
>;

/** Front matter as plain data, whatever it holds. */
export type Fields = Readonly<Record<string, unknown>>;

export const blankStep: StepRow = {
  from: "",
  what: "",
  part: "",
  found: "",
  where: "",
  minutes: "",
  note: "",
  words: "",
};
export const blankCause: CauseRow = { from: "", cause: "", part: "", role: "" };

/**
 * Lays front matter out as a form. What a text field cannot hold (a group where a word should stand, a word with a line
 * end in it) is shown as nothing; `fieldsOfForm` keeps it as long as nothing is written in its place.
 *
 * @param fields front matter as plain data, sound or not
 */
export function formOfFields(fields: Fields, story: string): CaseForm {
  const quoted = groupOf(fields.quoted);
  const word = (name: string) => lineOf(fields[name]);
  return {
    id: word("id"),
    title: word("title"),
    status: word("status"),
    instrument: word("instrument"),
    maker: word("maker"),
    model: word("model"),
    received: word("received"),
    closed: word("closed"),
    outcome: word("outcome"),
    minutes: word("minutes"),
    charge: word("charge"),
    complaint: textOf(fields.complaint),
    arrival: linesOf(fields.arrival),
    lessons: linesOf(fields.lessons),
    quotedMinutes: lineOf(quoted.minutes),
    quotedPrice: lineOf(quoted.price),
    story,
    steps: listOf(fields.path).map(stepRow),
    causes: listOf(fields.causes).map((cause, at) => {
      const { cause: id, part, role } = groupOf(cause);
      return { from: String(at), cause: lineOf(id), part: lineOf(part), role: lineOf(role) };
    }),
  };
}

/**
 * Reads a form back into front matter. A field that still shows what it showed keeps its value to the letter, and so does
 * everything that the form does not show: swap tests, plug and bore readings, unknown fields, the demo mark.
 * A number that cannot be read stays as it was typed, so that it can be found fault with and mended.
 *
 * @param base the front matter that the form was made from; empty for a new case
 * @returns plain data; `fieldsOfForm(formOfFields(base, ""), base)` equals base
 */
export function fieldsOfForm(form: CaseForm, base: Fields): Fields {
  const shown = formOfFields(base, form.story);
  const fields = new Map(Object.entries(base));
  const put = (name: string, isSame: boolean, value: unknown) => {
    if (isSame) return;
    if (value === undefined) fields.delete(name);
    else fields.set(name, value);
  };
  for (const name of [...wordFields, "complaint"] as const)
    put(name, form[name] === shown[name], wordsIn(form[name]));
  for (const name of numberFields) put(name, form[name] === shown[name], numberIn(form[name]));
  for (const name of lineFields) put(name, form[name] === shown[name], linesIn(form[name]));
  put(
    "quoted",
    form.quotedMinutes === shown.quotedMinutes && form.quotedPrice === shown.quotedPrice,
    overlay(groupOf(base.quoted), [
      ["minutes", form.quotedMinutes, shown.quotedMinutes, numberIn],
      ["price", form.quotedPrice, shown.quotedPrice, numberIn],
    ]),
  );
  const steps = form.steps.filter(isFilledStep);
  const path = steps.map((row) => stepOf(row, listOf(base.path)));
  put(
    "path",
    isSameList(steps, shown.steps.filter(isFilledStep)),
    path.length > 0 || base.path !== undefined ? path : undefined,
  );
  const rows = form.causes.filter(isFilledCause);
  const causes = rows.map((row) => causeOf(row, listOf(base.causes)));
  put(
    "causes",
    isSameList(rows, shown.causes.filter(isFilledCause)),
    causes.length > 0 || base.causes !== undefined ? causes : undefined,
  );
  return Object.fromEntries(fields);
}

/** Whether anything was entered in a step's row. */
export const isFilledStep = ({ from: _, ...row }: StepRow) =>
  Object.values(row).some((text) => text.trim() !== "");

/** Whether anything was entered in a cause's row. */
export const isFilledCause = ({ from: _, ...row }: CauseRow) =>
  Object.values(row).some((text) => text.trim() !== "");

/**
 * Adds up the minutes of the steps; what is no number counts for nothing.
 *
 * @returns minutes, to the hundredth
 */
export function sumStepMinutes({ steps }: Pick<CaseForm, "steps">): number {
  const sum = steps.reduce((total, { minutes }) => {
    const read = numberIn(minutes);
    return total + (typeof read === "number" && read > 0 ? read : 0);
  }, 0);
  return Math.round(100 * sum) / 100;
}

function stepRow(step: unknown, at: number): StepRow {
  const fields = groupOf(step);
  const kind = ["check", "repair"].find((name) => typeof fields[name] === "string");
  const from = String(at);
  if (kind === undefined) {
    return { ...blankStep, from, what: "kept", minutes: lineOf(fields.minutes), words: sayStep(step) };
  }
  return {
    from,
    what: `${kind} ${lineOf(fields[kind])}`,
    part: lineOf(fields.part),
    found: lineOf(kind === "check" ? fields.found : fields.result),
    where: lineOf(fields.where),
    minutes: lineOf(fields.minutes),
    note: textOf(fields.note),
    words: "",
  };
}

function stepOf(row: StepRow, path: readonly unknown[]): unknown {
  const original = row.from === "" ? undefined : path[Number(row.from)];
  if (row.what === "kept") return original;
  const [, kind = "check", id = ""] = /^(check|repair) (.*)$/.exec(row.what.trim()) ?? [];
  const before = groupOf(original);
  const base = typeof before[kind] === "string" ? before : {};
  const shown = base === before ? stepRow(original, 0) : blankStep;
  return overlay(
    base,
    [
      [kind, id, lineOf(base[kind]), (text) => text.trim()],
      ["part", row.part, shown.part, wordsIn],
      [kind === "check" ? "found" : "result", row.found, shown.found, wordsIn],
      ["where", row.where, shown.where, wordsIn],
      ["minutes", row.minutes, shown.minutes, numberIn],
      ["note", row.note, shown.note, wordsIn],
    ],
    kind,
  );
}

function causeOf(row: CauseRow, causes: readonly unknown[]): unknown {
  const base = row.from === "" ? {} : groupOf(causes[Number(row.from)]);
  return overlay(
    base,
    [
      ["cause", row.cause, lineOf(base.cause), (text) => text.trim()],
      ["part", row.part, lineOf(base.part), wordsIn],
      ["role", row.role, lineOf(base.role), wordsIn],
    ],
    "cause",
  );
}

type Change = readonly [name: string, text: string, shown: string, read: (text: string) => unknown];

/** A group with the changed texts read into it; `always` names a field that must be there, empty or not. */
function overlay(base: Fields, changes: readonly Change[], always?: string): Fields | undefined {
  const fields = new Map(Object.entries(base));
  for (const [name, text, shown, read] of changes) {
    if (text === shown && (name !== always || fields.has(name))) continue;
    const value = read(text);
    if (value === undefined) fields.delete(name);
    else fields.set(name, value);
  }
  return fields.size > 0 ? Object.fromEntries(fields) : undefined;
}

function isSameList<Row extends Readonly<Record<string, string>>>(
  a: readonly Row[],
  b: readonly Row[],
): boolean {
  return (
    a.length === b.length &&
    a.every((row, at) => Object.entries(row).every(([key, text]) => b[at]?.[key] === text))
  );
}
