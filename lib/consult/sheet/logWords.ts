import { blankStep, type CaseForm } from "../../casebook/form/caseForm";
import { lineOf } from "../../casebook/form/fieldTexts";
import { formatPartRef } from "../../casebook/partRef";
import type { Reader } from "../../reading/reader";
import { problemSchema } from "../problem";
import { understandProblem } from "../understand/understandProblem";
import type { SentSheet } from "./sentSheet";
import { stampMinutes } from "./stampMinutes";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** Logs what was said in the words of the bench, a step a finding. */
export function logWords({ sent, before, form, ground: { reader, nowMs } }: SheetWish): WishMet {
  const said = stepsSaid(sent, lineOf(before.instrument), reader);
  if (said.length === 0)
    return refuse(
      "words",
      "nothing that the handbook knows",
      "it otherwise, or choose the check from the list",
    );
  const { steps, fields } = stampMinutes(said, before, nowMs);
  return { form: { ...form, steps: [...form.steps, ...steps] }, fields };
}

/** The steps that a sentence of the bench tells of; its minutes are counted once, at the last of them. */
function stepsSaid({ words, form }: SentSheet, instrument: string, reader: Reader): CaseForm["steps"] {
  const minutes = form.steps[0]?.minutes ?? "";
  const says = problemSchema.safeParse({ says: words, ...(instrument ? { instrument } : {}) }).data;
  const findings = says
    ? understandProblem(says, reader).findings.filter(({ shown }) => !shown.doubtful)
    : [];
  return findings.map(({ check, outcome, part }, at) => ({
    ...blankStep,
    what: `check ${check}`,
    part: part ? formatPartRef(part) : "",
    found: outcome,
    minutes: at === findings.length - 1 ? minutes : "",
    note: at === 0 ? words : "",
  }));
}
