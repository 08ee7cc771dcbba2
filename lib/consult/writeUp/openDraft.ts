import { blankCause, blankStep, type Fields, formOfFields } from "../../casebook/form/caseForm";
import { proposeId } from "../../casebook/form/proposeId";
import { writeCase } from "../../casebook/writeCase";
import type { Draft } from "./draftCase";

const emptyRows = { steps: 4, causes: 2 } as const;

/**
 * Opens a new case to be written up, with the next id proposed and the day filled in on which it is closed.
 *
 * @param fields what is known already, from the bench say; front matter as plain data
 * @param today year-month-day
 */
export function openDraft(fields: Fields, taken: Iterable<string>, today: string): Draft {
  const isBare = Object.keys(fields).length === 0;
  const form = formOfFields(fields, "");
  const whole = {
    ...form,
    id: proposeId(taken, today),
    status: "closed",
    closed: today,
    steps: [...form.steps, ...Array(Math.max(1, emptyRows.steps - form.steps.length)).fill(blankStep)],
    causes: [...form.causes, ...Array(Math.max(1, emptyRows.causes - form.causes.length)).fill(blankCause)],
  };
  return {
    view: "form",
    form: whole,
    base: isBare ? "" : writeCase(fields, ""),
    text: "",
    problems: [],
    asked: false,
  };
}
