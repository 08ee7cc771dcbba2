import { labelOf } from "@/app/_components/labelOf";
import type { Case } from "@/lib/casebook/caseFile";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** The instrument as it is written on a ticket: its kind, maker and model. */
export const instrumentWords = (
  { instrument, maker, model }: Pick<Case, "instrument" | "maker" | "model">,
  { instruments }: Pick<Vocabulary, "instruments">,
) =>
  [labelOf(instruments, instrument).toLowerCase(), [maker, model].filter(Boolean).join(" ")]
    .filter(Boolean)
    .join(", ");
