import {
  blankCause,
  blankStep,
  type CaseForm,
  type Fields,
  fieldsOfForm,
  formOfFields,
  isFilledCause,
  isFilledStep,
  sumStepMinutes,
} from "../../casebook/form/caseForm";
import { controlOf } from "../../casebook/form/controlOf";
import type { SentCase } from "../../casebook/form/sentCase";
import { readCase } from "../../casebook/readCase";
import { writeCase } from "../../casebook/writeCase";
import type { ContentProblem } from "../../document/contentProblem";
import { readFrontMatter } from "../../document/readFrontMatter";
import type { Reader } from "../../reading/reader";
import { settleForm } from "./settleForm";

/** A problem of a draft, with the form's control that it is about; empty where it is about none. */
export type DraftProblem = ContentProblem & Readonly<{ control: string }>;

/** A case being written up: the same case as form and as Markdown, and what still keeps it from being saved. */
export type Draft = Readonly<{
  view: "form" | "text";
  form: CaseForm;
  base: string;
  text: string;
  problems: readonly DraftProblem[];
  /** Whether it was asked what is wrong: until then nobody is told off for what they have not come to yet. */
  asked: boolean;
}>;

/** What a draft is held against: the vocabulary by its reader, and the ids that other cases have. */
export type DraftGround = Readonly<{ reader: Reader; taken: Readonly<{ has: (id: string) => boolean }> }>;

const moreRows = 4;

/**
 * Takes a draft one wish further. Both views come out in step: the text is what the form says, or the form what the text
 * says. A text that cannot be read as front matter keeps the text view, so that nothing in it is lost.
 *
 * @returns the draft to show; `text` is what a save would write
 */
export function advanceDraft(sent: SentCase, { reader, taken }: DraftGround): Draft {
  const settled = sent.view === "form" ? settleForm(sent.form, reader) : sent.form;
  const form = sent.wish === "sum" ? { ...settled, minutes: String(sumStepMinutes(settled)) } : settled;
  const text = sent.view === "form" ? textOfForm(form, sent.base) : sent.text;
  const problems = findProblems(text, form, { reader, taken });
  const draft: Draft = {
    view: sent.view,
    form: trimRows(form),
    base: sent.base,
    text,
    problems,
    asked: sent.wish === "check" || sent.wish === "save",
  };
  switch (sent.wish) {
    case "more-steps":
      return {
        ...draft,
        form: { ...draft.form, steps: [...draft.form.steps, ...Array(moreRows).fill(blankStep)] },
      };
    case "more-causes":
      return { ...draft, form: { ...draft.form, causes: [...draft.form.causes, blankCause, blankCause] } };
    case "show-text":
      return { ...draft, view: "text" };
    case "show-form":
      return showForm(draft, { reader, taken });
    default:
      return draft;
  }
}

/** The draft with what kept it from being saved. */
export function refuseDraft(draft: Draft, problems: readonly ContentProblem[]): Draft {
  return { ...draft, asked: true, problems: placeProblems(problems, draft.form) };
}

/**
 * Writes a form as Markdown. A form that still shows what its base shows gives the base again, to the letter.
 *
 * @param base the Markdown that the form was made from; empty for a new case
 */
export function textOfForm(form: CaseForm, base: string): string {
  const { fields, story } = readBase(base);
  const written = fieldsOfForm(form, fields);
  const isUntouched =
    base !== "" && form.story.trim() === story && JSON.stringify(written) === JSON.stringify(fields);
  return isUntouched ? base : writeCase(written, form.story);
}

/** The draft in its form view, made from its text; the text view where the text has no front matter that can be read. */
function showForm(draft: Draft, ground: DraftGround): Draft {
  if (draft.view === "form") return draft;
  const { fields, story, isReadable } = readBase(draft.text);
  if (!isReadable) return { ...draft, asked: true };
  const form = formOfFields(fields, story);
  const problems = findProblems(draft.text, form, ground);
  return { ...draft, view: "form", form: trimRows(form), base: draft.text, problems };
}

function readBase(text: string): Readonly<{ fields: Fields; story: string; isReadable: boolean }> {
  const { data, body, problems } = readFrontMatter(text, "case.md");
  const isReadable =
    problems.length === 0 && (data === null || (typeof data === "object" && !Array.isArray(data)));
  return {
    fields: isReadable && data ? Object.fromEntries(Object.entries(data)) : {},
    story: body,
    isReadable,
  };
}

function findProblems(text: string, form: CaseForm, { reader, taken }: DraftGround): DraftProblem[] {
  const reading = readCase(text, "case.md", reader.vocabulary);
  const problems: ContentProblem[] = [...reading.problems];
  if (reading.case && taken.has(reading.case.id)) {
    const received = `'${reading.case.id}', which another case has`;
    problems.push({ file: "case.md", line: 2, field: "id", received, expected: "an id of its own" });
  }
  return placeProblems(problems, form);
}

const placeProblems = (problems: readonly ContentProblem[], form: CaseForm): DraftProblem[] =>
  problems.map((problem) => ({ ...problem, control: controlOf(problem.field, form) }));

/** Empty rows fall away, and a few stand ready at the end. */
function trimRows(form: CaseForm): CaseForm {
  const steps = form.steps.filter(isFilledStep);
  const causes = form.causes.filter(isFilledCause);
  return {
    ...form,
    steps: [...steps, ...Array(Math.max(1, moreRows - steps.length)).fill(blankStep)],
    causes: [...causes, ...Array(Math.max(1, 2 - causes.length)).fill(blankCause)],
  };
}
