import type { Case } from "../../casebook/caseFile";
import { groupOf, lineOf, listOf } from "../../casebook/form/fieldTexts";
import { readCase } from "../../casebook/readCase";
import { isRepairStep } from "../../casebook/step";
import { writeCase } from "../../casebook/writeCase";
import { appliesTo } from "../../vocabulary/appliesTo";
import { settleForm } from "../writeUp/settleForm";
import { likelyPart } from "./likelyPart";
import { refuse, type SheetWish, type WishMet } from "./wish";

type Planned = NonNullable<Case["plan"]>[number];

/** Puts a repair on the plan of a job; `repair` names it, and after a blank the cause that it is for. */
export function planRepair(wish: SheetWish): WishMet {
  const { sent, before, form, ground } = wish;
  const [repair = "", cause] = sent.repair.split(" ");
  if (repair === "") return refuse("plan", "no repair", "the repair that is to be done");
  const [step] = settleForm({ ...form, steps: sent.form.steps.slice(0, 1), causes: [] }, ground.reader).steps;
  const part = step?.part || likelyPartOf(wish, repair);
  const planned = {
    repair,
    ...(part ? { part } : {}),
    ...(cause ? { for: cause } : {}),
  };
  return { form, fields: { plan: [...listOf(before.plan), planned] } };
}

/** Takes a repair off the plan, by its place from 0. */
export function dropPlanned({ sent, before, form }: SheetWish): WishMet {
  const plan = listOf(before.plan).filter((_, at) => at !== sent.at);
  return { form, fields: { plan: plan.length > 0 ? plan : undefined } };
}

/** Keeps which of the checks that go before a planned repair were seen, and which were ticked as made. */
export function lookFirst({ sent, before, form }: SheetWish): WishMet {
  const plan = listOf(before.plan);
  if (plan[sent.at] === undefined) return refuse("plan", "no such repair", "the repair onto the plan first");
  const kept = plan.map((planned, at) =>
    at === sent.at ? { ...groupOf(planned), seen: sent.seen, ticked: sent.ticked } : planned,
  );
  return { form, fields: { plan: kept } };
}

/** Takes over the repairs that helped in a past case, as a draft: on this job's parts, less what is planned already. */
export function takeOverPlan(wish: SheetWish): WishMet {
  const { sent, before, form, ground } = wish;
  const past = ground.caseOf(sent.from);
  const { vocabulary } = ground.reader;
  if (!past) return refuse("plan", `no case '${sent.from}'`, "the id of a case in the casebook");
  const planned = listOf(before.plan);
  const known = new Set(planned.map((one) => lineOf(groupOf(one).repair)));
  const root = past.causes.find(({ role }) => role === "root")?.cause;
  const drafts = helpful(past)
    .filter((repair) => !known.has(repair))
    .filter((repair) =>
      appliesTo(vocabulary, vocabulary.repairs.get(repair)?.families ?? [], lineOf(before.instrument)),
    )
    .map((repair): Planned => {
      const part = likelyPartOf(wish, repair);
      return { repair, ...(part ? { part } : {}), ...(root ? { for: root } : {}), from: past.id };
    });
  if (drafts.length === 0)
    return refuse(
      "plan",
      "no repair in that case that helped and is not planned already",
      "one from the list",
    );
  return { form, fields: { plan: [...planned, ...drafts] } };
}

/** The repairs of a case that mended or bettered something, each once, in their order. */
const helpful = ({ path }: Case) => [
  ...new Set(
    path
      .filter(isRepairStep)
      .flatMap(({ repair, result }) => (result === "fixed" || result === "better" ? [repair] : [])),
  ),
];

/** The part of this job that a repair is most likely about; empty where it does not show. */
function likelyPartOf({ before, form, ground: { reader } }: SheetWish, repair: string): string {
  const kase = readCase(
    writeCase({ ...before, status: "open" }, form.story),
    "sheet",
    reader.vocabulary,
  ).case;
  const parts = reader.vocabulary.repairs.get(repair)?.parts ?? [];
  return kase ? likelyPart(kase, parts, reader.vocabulary) : "";
}
