import { numberIn } from "../../casebook/form/fieldTexts";
import { clockMinutes, clockTime } from "./clock";
import { readClock } from "./readClock";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** Sets a job's clock going, stops it, puts it right, or takes it away. What it holds is kept to the hundredth. */
export function turnClock({ sent, before, form, ground: { nowMs } }: SheetWish): WishMet {
  const clock = readClock(before) ?? { minutes: 0 };
  const held = Math.round(100 * clockMinutes(clock, nowMs)) / 100;
  const since = clockTime(nowMs);
  switch (sent.clock) {
    case "start":
      return { form, fields: { clock: { minutes: held, since } } };
    case "stop":
      return { form, fields: { clock: { minutes: held } } };
    case "off":
      return { form, fields: { clock: undefined } };
    default: {
      const minutes = numberIn(sent.clockMinutes);
      if (typeof minutes !== "number" || minutes < 0)
        return refuse(
          "clock",
          minutes === undefined ? "nothing" : `'${minutes}'`,
          "the minutes it should show",
        );
      return { form, fields: { clock: { minutes, ...(clock.since === undefined ? {} : { since }) } } };
    }
  }
}
