import { isFilledStep } from "../../casebook/form/caseForm";
import { listOf, numberIn, wordsIn } from "../../casebook/form/fieldTexts";
import { settleForm } from "../writeUp/settleForm";
import { stampMinutes } from "./stampMinutes";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** Logs a check with what it found, or a repair with what came of it; a harm is told of beside it. */
export function logStep({ sent, before, form, ground: { reader, nowMs } }: SheetWish): WishMet {
  const filled = sent.form.steps.filter(isFilledStep);
  const [step] = filled;
  if (!step?.what || !step.found)
    return refuse("step", "nothing chosen", "what was checked or mended, and what came of it");
  const { steps, fields } = stampMinutes(filled, before, nowMs);
  const changed = { ...form, steps: [...form.steps, ...steps] };
  if (!step.what.startsWith("repair ") || step.found !== "harm") return { form: changed, fields };
  if (sent.harmWhat === "")
    return refuse("harm", "nothing", "what the repair did to the instrument, in a line");
  const part = settleForm({ ...form, steps: [step], causes: [] }, reader).steps[0]?.part;
  const how = wordsIn(sent.harmHow);
  const harm = {
    repair: step.what.replace(/^repair /, ""),
    ...(part ? { part } : {}),
    what: sent.harmWhat,
    ...(how ? { how } : {}),
    step: numberIn(sent.harmStep) ?? changed.steps.length,
    minutes: numberIn(sent.harmMinutes) ?? 0,
    paidBy: sent.harmPaidBy,
  };
  return { form: changed, fields: { ...fields, harms: [...listOf(before.harms), harm] } };
}
