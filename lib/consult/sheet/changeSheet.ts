import {
  blankStep,
  type CaseForm,
  type Fields,
  fieldsOfForm,
  formOfFields,
  isFilledStep,
} from "../../casebook/caseForm";
import { groupOf, lineOf, listOf, numberIn, wordsIn } from "../../casebook/fieldTexts";
import { formatPartRef } from "../../casebook/partRef";
import { readCase } from "../../casebook/readCase";
import { writeCase } from "../../casebook/writeCase";
import type { ContentProblem } from "../../document/contentProblem";
import { readFrontMatter } from "../../document/readFrontMatter";
import type { Reader } from "../../reading/reader";
import { problemSchema } from "../problem";
import { settleForm } from "../settleForm";
import { understandProblem } from "../understandProblem";
import { listProofs } from "./listProofs";
import type { SentSheet } from "./sentSheet";

/** A job's sheet after a wish, as its whole file; or what keeps the wish from being met. */
export type ChangedSheet =
  | Readonly<{ text: string; problems: readonly [] }>
  | Readonly<{ text: undefined; problems: readonly ContentProblem[] }>;

/**
 * Takes the version of a sheet that stood on the page one wish further. What the wish does not touch is kept: readings, notes,
 * fields that nobody here knows. Whether the outcome holds as a case is left to the save, but for what only a closing must
 * say.
 */
export function changeSheet(sent: SentSheet, reader: Reader): ChangedSheet {
  if (sent.wish === "mine") return { text: sent.text, problems: [] };
  const { data, body, problems } = readFrontMatter(sent.base, `${sent.sheet}.md`);
  if (problems.length > 0) return { text: undefined, problems };
  const before = groupOf(data);
  const fault = (field: string, received: string, expected: string): ChangedSheet => ({
    text: undefined,
    problems: [{ file: `${sent.sheet}.md`, line: 0, field, received, expected }],
  });
  const form = formOfFields(before, body);
  const write = (changed: CaseForm, more: Fields = {}): ChangedSheet => {
    const fields = fieldsOfForm(settleForm(changed, reader), before);
    return { text: writeCase({ ...fields, ...more }, changed.story), problems: [] };
  };
  switch (sent.wish) {
    case "log": {
      const steps = sent.form.steps.filter(isFilledStep);
      const [step] = steps;
      if (!step?.what || !step.found)
        return fault("step", "nothing chosen", "what was checked or mended, and what came of it");
      const changed = { ...form, steps: [...form.steps, ...steps] };
      if (!step.what.startsWith("repair ") || step.found !== "harm") return write(changed);
      if (sent.harmWhat === "")
        return fault("harm", "nothing", "what the repair did to the instrument, in a line");
      const part = settleForm({ ...form, steps: [step], causes: [] }, reader).steps[0]?.part;
      const harm = {
        repair: step.what.replace(/^repair /, ""),
        ...(part ? { part } : {}),
        what: sent.harmWhat,
        minutes: numberIn(sent.harmMinutes) ?? 0,
        paidBy: sent.harmPaidBy,
      };
      return write(changed, { harms: [...listOf(before.harms), harm] });
    }
    case "say": {
      const steps = stepsSaid(sent, lineOf(before.instrument), reader);
      return steps.length === 0
        ? fault("words", "nothing that the handbook knows", "it otherwise, or choose the check from the list")
        : write({ ...form, steps: [...form.steps, ...steps] });
    }
    case "undo":
      return form.steps.length === 0
        ? fault("path", "no step", "a step first")
        : write({ ...form, steps: form.steps.slice(0, -1) }, { harms: harmsWithoutLast(before) });
    case "edit":
      return write(overlayNamed(form, sent), swallowedOf(sent, before));
    default:
      return closeSheet(sent, before, form, write, fault, reader);
  }
}

type Write = (form: CaseForm, more?: Fields) => ChangedSheet;
type Fault = (field: string, received: string, expected: string) => ChangedSheet;

/** The job as a finished case: ticked proofs join the path, and what is fixed is proven or it is said why not. */
function closeSheet(
  sent: SentSheet,
  before: Fields,
  form: CaseForm,
  write: Write,
  fault: Fault,
  reader: Reader,
): ChangedSheet {
  const { vocabulary } = reader;
  const now = readCase(writeCase({ ...before, status: "open" }, form.story), "sheet", vocabulary).case;
  const proofs = now ? listProofs(now, vocabulary) : [];
  const ticked = proofs.filter(({ key, standing }) => standing !== "proven" && sent.proofs.includes(key));
  const missing = proofs.filter(({ key, standing }) => standing !== "proven" && !sent.proofs.includes(key));
  const overlaid = overlayNamed(form, sent);
  if (overlaid.outcome === "fixed" && sent.unproven === "") {
    if (missing.length > 0) {
      const open = missing.map(({ check }) => vocabulary.checks.get(check)?.label ?? check).join("; ");
      return fault(
        "proof",
        `no proof yet of: ${open}`,
        "a tick at each that was done and holds, or say why it is closed without",
      );
    }
    if (proofs.length === 0)
      return fault(
        "proof",
        "no repair in the path that mended anything",
        "the repair first, or say why it is closed as fixed",
      );
  }
  const steps = ticked.map(({ check, outcome, part }) => ({
    ...blankStep,
    what: `check ${check}`,
    part: part ?? "",
    found: outcome,
  }));
  const changed = { ...overlaid, status: "closed", steps: [...overlaid.steps, ...steps] };
  return write(changed, { unproven: wordsIn(sent.unproven), ...swallowedOf(sent, before) });
}

/** The form with the fields that were sent in it; the steps stay as they are, and rows without a cause fall away. */
function overlayNamed(form: CaseForm, { form: sent, named }: SentSheet): CaseForm {
  const fields = Object.entries(sent).filter(
    ([name]) => name !== "id" && name !== "steps" && named.has(name),
  );
  const causes = [...named].some((name) => name.startsWith("cause."))
    ? sent.causes.filter(({ cause }) => cause !== "")
    : form.causes;
  return { ...form, ...Object.fromEntries(fields), causes };
}

/** What the shop swallowed, as far as it was sent; blank for nothing. */
function swallowedOf({ named, swallowedMinutes, swallowedMoney }: SentSheet, before: Fields): Fields {
  if (!named.has("swallowedMinutes") && !named.has("swallowedMoney")) return {};
  const [minutes, money] = [numberIn(swallowedMinutes), numberIn(swallowedMoney)];
  if (minutes === undefined && money === undefined) return { swallowed: undefined };
  return { swallowed: { ...groupOf(before.swallowed), minutes: minutes ?? 0, money: money ?? 0 } };
}

/** The harms without the one that the last step did, where it did one. */
function harmsWithoutLast({ path, harms }: Fields): readonly unknown[] | undefined {
  const { repair, result } = groupOf(listOf(path).at(-1));
  const list = listOf(harms);
  if (harms === undefined) return undefined;
  const last = result === "harm" ? list.findLastIndex((harm) => groupOf(harm).repair === repair) : -1;
  return list.filter((_, at) => at !== last);
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
