import { fieldsOfForm, formOfFields } from "../../casebook/form/caseForm";
import { groupOf } from "../../casebook/form/fieldTexts";
import { writeCase } from "../../casebook/writeCase";
import type { ContentProblem } from "../../document/contentProblem";
import { readFrontMatter } from "../../document/readFrontMatter";
import { settleForm } from "../writeUp/settleForm";
import { addPhotos, describePhoto, putBackPhoto, takeOffPhoto } from "./arrivalPhotos";
import { closeSheet } from "./closeSheet";
import { giveQuote } from "./giveQuote";
import { logReadings } from "./logReadings";
import { logStep } from "./logStep";
import { logWords } from "./logWords";
import { mendMinutes } from "./mendMinutes";
import { overlayNamed, swallowedOf } from "./overlayNamed";
import { dropPlanned, lookFirst, planRepair, takeOverPlan } from "./planRepairs";
import type { SentSheet } from "./sentSheet";
import { takeBack } from "./takeBack";
import { turnClock } from "./turnClock";
import type { SheetGround, SheetWish, WishMet } from "./wish";

/** A job's sheet after a wish, as its whole file; or what keeps the wish from being met. */
export type ChangedSheet =
  | Readonly<{ text: string; problems: readonly [] }>
  | Readonly<{ text: undefined; problems: readonly ContentProblem[] }>;

/** How each wish about the fields of a sheet is met. */
const meet: Readonly<Record<Exclude<SentSheet["wish"], "mine" | "restore">, (wish: SheetWish) => WishMet>> = {
  log: logStep,
  say: logWords,
  undo: takeBack,
  minutes: mendMinutes,
  clock: turnClock,
  quote: giveQuote,
  plan: planRepair,
  unplan: dropPlanned,
  look: lookFirst,
  "take-over": takeOverPlan,
  edit: ({ sent, before, form }) => ({ form: overlayNamed(form, sent), fields: swallowedOf(sent, before) }),
  close: closeSheet,
  photos: addPhotos,
  caption: describePhoto,
  "photo-off": takeOffPhoto,
  "photo-back": putBackPhoto,
  readings: logReadings,
};

/**
 * Takes the version of a sheet that stood on the page one wish further. What the wish does not touch is kept: readings, notes,
 * fields that nobody here knows. Whether the outcome holds as a case is left to the save, but for what only a closing must
 * say.
 *
 * @throws for the wish to restore, which is about versions and not about fields
 */
export function changeSheet(sent: SentSheet, ground: SheetGround): ChangedSheet {
  if (sent.wish === "mine") return { text: sent.text, problems: [] };
  if (sent.wish === "restore")
    throw new Error("a wish must be about the sheet's fields; got restore; call restoreRevision");
  const file = `${sent.sheet}.md`;
  const { data, body, problems } = readFrontMatter(sent.base, file);
  if (problems.length > 0) return { text: undefined, problems };
  const before = groupOf(data);
  const met = meet[sent.wish]({ sent, before, form: formOfFields(before, body), ground });
  if ("fault" in met) return { text: undefined, problems: [{ file, line: 0, ...met.fault }] };
  const fields = fieldsOfForm(settleForm(met.form, ground.reader), before);
  return { text: writeCase({ ...fields, ...met.fields }, met.form.story), problems: [] };
}
