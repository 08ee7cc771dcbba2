import type { Fields } from "../../casebook/form/caseForm";
import { groupOf, lineOf, listOf, textOf } from "../../casebook/form/fieldTexts";
import { proposeId } from "../../casebook/form/proposeId";
import { proposeTitle } from "../../casebook/form/proposeTitle";
import { writeCase } from "../../casebook/writeCase";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/**
 * Writes the bench sheet of a job that was just begun: what is known from the bench, under the next free id, with a title
 * that can be bettered.
 *
 * @param fields what the bench says, as front matter; an instrument that it does not say is taken for any of the trade's
 * @param taken ids that are in use
 * @param today year-month-day
 */
export function newSheet(
  fields: Fields,
  { instruments }: Pick<Vocabulary, "instruments">,
  taken: Iterable<string>,
  today: string,
): Readonly<{ id: string; text: string }> {
  const id = proposeId(taken, today);
  const [anyInstrument] = instruments.values();
  const instrument = lineOf(fields.instrument) || (anyInstrument?.id ?? "");
  const label = instruments.get(instrument)?.label ?? instrument;
  const said = textOf(fields.complaint);
  const complaint =
    said || `Nothing said; ${listOf(fields.path).map(sayFound).join(", ") || "nothing found yet"}.`;
  const front = {
    ...fields,
    id,
    title: proposeTitle(label, said),
    status: "open",
    instrument,
    received: today,
    complaint: complaint.slice(0, 2000),
  };
  return { id, text: writeCase(front, "") };
}

function sayFound(step: unknown): string {
  const { check, swap, found } = groupOf(step);
  return `${[textOf(check) || listOf(swap).join(" in ")].join("")} ${textOf(found)}`
    .replaceAll("-", " ")
    .trim();
}
