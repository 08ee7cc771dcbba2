import type { Fields } from "../../casebook/form/caseForm";
import { groupOf, numberIn } from "../../casebook/form/fieldTexts";
import { clockTime } from "./clock";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** What like cases said when a quote was given. */
const figures = ["p50", "p80", "p95"] as const;

/** Keeps what the customer was told, with the day and what like cases said of it at that time. */
export function giveQuote({ sent, before, form, ground: { nowMs } }: SheetWish): WishMet {
  const { quotedMinutes, quotedPrice } = sent.form;
  if (quotedMinutes.trim() === "" || quotedPrice.trim() === "")
    return refuse("quote", "minutes or price left blank", "both, as the customer was told them");
  const said = Object.fromEntries(
    figures
      .map((name): [string, unknown] => [name, numberIn(sent[name])])
      .filter(([, value]) => value !== undefined),
  );
  const quoted: Fields = {
    ...withoutFigures(groupOf(before.quoted)),
    minutes: numberIn(quotedMinutes),
    price: numberIn(quotedPrice),
    on: clockTime(nowMs).slice(0, 10),
    ...said,
  };
  return { form: { ...form, quotedMinutes, quotedPrice }, fields: { quoted } };
}

const withoutFigures = (quoted: Fields) =>
  Object.fromEntries(Object.entries(quoted).filter(([name]) => !figures.some((figure) => figure === name)));
