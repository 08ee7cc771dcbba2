import type { Fields } from "../../casebook/form/caseForm";
import { groupOf, listOf, numberIn } from "../../casebook/form/fieldTexts";
import { readClock } from "./readClock";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** Takes the last step back, with the harms that it did; where there is a clock its minutes go back to it. */
export function takeBack({ before, form }: SheetWish): WishMet {
  const last = form.steps.at(-1);
  if (!last) return refuse("path", "no step", "a step first");
  const clock = readClock(before);
  const minutes = numberIn(last.minutes);
  return {
    form: { ...form, steps: form.steps.slice(0, -1) },
    fields: {
      harms: harmsWithoutLast(before),
      ...(clock && typeof minutes === "number"
        ? { clock: { ...groupOf(before.clock), minutes: clock.minutes + minutes } }
        : {}),
    },
  };
}

/** The harms without those that the last step did: they name it, or where none does, the last that names its repair. */
function harmsWithoutLast({ path, harms }: Fields): readonly unknown[] | undefined {
  if (harms === undefined) return undefined;
  const list = listOf(harms);
  const steps = listOf(path);
  const others = list.filter((harm) => groupOf(harm).step !== steps.length);
  const { repair, result } = groupOf(steps.at(-1));
  if (others.length < list.length || result !== "harm") return others;
  const last = list.findLastIndex((harm) => groupOf(harm).repair === repair);
  return list.filter((_, at) => at !== last);
}
