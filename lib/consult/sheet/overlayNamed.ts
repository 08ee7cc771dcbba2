import type { CaseForm, Fields } from "../../casebook/form/caseForm";
import { groupOf, numberIn } from "../../casebook/form/fieldTexts";
import type { SentSheet } from "./sentSheet";

/** The form with the fields that were sent in it; the steps stay as they are, and rows without a cause fall away. */
export function overlayNamed(form: CaseForm, { form: sent, named }: SentSheet): CaseForm {
  const fields = Object.entries(sent).filter(
    ([name]) => name !== "id" && name !== "steps" && named.has(name),
  );
  const causes = [...named].some((name) => name.startsWith("cause."))
    ? sent.causes.filter(({ cause }) => cause !== "")
    : form.causes;
  return { ...form, ...Object.fromEntries(fields), causes };
}

/** What the shop swallowed, as far as it was sent; blank for nothing. */
export function swallowedOf({ named, swallowedMinutes, swallowedMoney }: SentSheet, before: Fields): Fields {
  if (!named.has("swallowedMinutes") && !named.has("swallowedMoney")) return {};
  const [minutes, money] = [numberIn(swallowedMinutes), numberIn(swallowedMoney)];
  if (minutes === undefined && money === undefined) return { swallowed: undefined };
  return { swallowed: { ...groupOf(before.swallowed), minutes: minutes ?? 0, money: money ?? 0 } };
}
