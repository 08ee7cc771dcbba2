import type { SheetWish, WishMet } from "./wish";

/** Puts the minutes of logged steps right; what else they say stays. */
export function mendMinutes({ sent, form }: SheetWish): WishMet {
  const minutes = new Map(sent.form.steps.map((step) => [step.from, step.minutes]));
  return {
    form: {
      ...form,
      steps: form.steps.map((step) => ({ ...step, minutes: minutes.get(step.from) ?? step.minutes })),
    },
  };
}
