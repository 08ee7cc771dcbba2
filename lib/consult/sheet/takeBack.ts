import type { Fields } from "../../casebook/form/caseForm";
import { groupOf, listOf, numberIn } from "../../casebook/form/fieldTexts";
import { readClock } from "./readClock";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** Takes the last step back, with the harm that it did; where there is a clock its minutes go back to it. */
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

/** The harms without the one that the last step did, where it did one. */
function harmsWithoutLast({ path, harms }: Fields): readonly unknown[] | undefined {
  const { repair, result } = groupOf(listOf(path).at(-1));
  const list = listOf(harms);
  if (harms === undefined) return undefined;
  const last = result === "harm" ? list.findLastIndex((harm) => groupOf(harm).repair === repair) : -1;
  return list.filter((_, at) => at !== last);
}
