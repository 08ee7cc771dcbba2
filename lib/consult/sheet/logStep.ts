import { type Fields, isFilledStep } from "../../casebook/form/caseForm";
import { groupOf, lineOf, listOf, numberIn, wordsIn } from "../../casebook/form/fieldTexts";
import { settleForm } from "../writeUp/settleForm";
import type { SentSheet } from "./sentSheet";
import { stampMinutes } from "./stampMinutes";
import { refuse, type SheetWish, type WishMet } from "./wish";

/**
 * Logs a check with what it found, or a repair with what came of it; a harm is told of beside it. A harm that an earlier
 * repair of the path did is told of that one, and no step is logged for it.
 */
export function logStep({ sent, before, form, ground: { reader, nowMs } }: SheetWish): WishMet {
  const filled = sent.form.steps.filter(isFilledStep);
  const [step] = filled;
  if (!step?.what || !step.found)
    return refuse("step", "nothing chosen", "what was checked or mended, and what came of it");
  const isHarm = step.what.startsWith("repair ") && step.found === "harm";
  if (isHarm && sent.harmWhat === "")
    return refuse("harm", "nothing", "what the repair did to the instrument, in a line");
  if (isHarm && sent.harmStep !== "") {
    const number = Number(sent.harmStep);
    const done = groupOf(listOf(before.path)[number - 1]);
    const repair = lineOf(done.repair);
    if (repair === "") return refuse("harm", `step ${sent.harmStep}`, "the number of a repair in the path");
    return { form, fields: harmAdded(before, sent, { repair, part: lineOf(done.part), step: number }) };
  }
  const { steps, fields } = stampMinutes(filled, before, nowMs);
  const changed = { ...form, steps: [...form.steps, ...steps] };
  if (!isHarm) return { form: changed, fields };
  const part = settleForm({ ...form, steps: [step], causes: [] }, reader).steps[0]?.part ?? "";
  const by = { repair: step.what.replace(/^repair /, ""), part, step: changed.steps.length };
  return { form: changed, fields: { ...fields, ...harmAdded(before, sent, by) } };
}

/** The harms of a job with one more, by which repair and step, from 1. */
function harmAdded(
  before: Fields,
  { harmWhat, harmHow, harmMinutes, harmPaidBy }: SentSheet,
  { repair, part, step }: Readonly<{ repair: string; part: string; step: number }>,
): Fields {
  const how = wordsIn(harmHow);
  const harm = {
    repair,
    ...(part ? { part } : {}),
    what: harmWhat,
    ...(how ? { how } : {}),
    step,
    minutes: numberIn(harmMinutes) ?? 0,
    paidBy: harmPaidBy,
  };
  return { harms: [...listOf(before.harms), harm] };
}
