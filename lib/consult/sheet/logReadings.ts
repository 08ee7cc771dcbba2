import { blankStep } from "../../casebook/form/caseForm";
import { lineOf, listOf, numberIn } from "../../casebook/form/fieldTexts";
import { type ReadingsInput, readingsSchema } from "../gauge/readingsInput";
import { newReadings } from "./newReadings";
import { stampMinutes } from "./stampMinutes";
import { stepsOfReadings } from "./stepsOfReadings";
import { refuse, type SheetWish, type WishMet } from "./wish";

/**
 * Logs gauge readings, a step each set of plugs, each section of a bore and each swap. What the path has already is not
 * logged again. The minutes stand at the last of the steps.
 */
export function logReadings({ sent, before, form, ground: { reader, nowMs } }: SheetWish): WishMet {
  const readings = parseReadings(sent.readings);
  if (!readings) return refuse("readings", "none", "plugs, diameters or swaps first");
  const told = stepsOfReadings(readings, reader, lineOf(before.instrument));
  if ("fault" in told) return told;
  const steps = newReadings(told.steps, listOf(before.path));
  if (steps.length === 0)
    return refuse("readings", "only what the path has already", "what was read anew, or leave it as it is");
  const [typed] = sent.form.steps;
  const row = { ...blankStep, what: "kept", minutes: typed?.minutes ?? "" };
  const { steps: stamped, fields } = stampMinutes([row], before, nowMs);
  const minutes = numberIn(stamped[0]?.minutes ?? "");
  const latest = steps.at(-1);
  const note = [lineOf(latest?.note), typed?.note.trim() ?? ""].filter(Boolean).join(" ");
  const last = {
    ...latest,
    ...(minutes === undefined ? {} : { minutes }),
    ...(note === "" ? {} : { note }),
  };
  return { form, fields: { ...fields, path: [...listOf(before.path), ...steps.slice(0, -1), last] } };
}

function parseReadings(text: string): ReadingsInput | undefined {
  try {
    return readingsSchema.safeParse(JSON.parse(text)).data;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
