"use server";

import { redirect } from "next/navigation";
import { addCase } from "@/app/_data/addCase";
import { getShop } from "@/app/_data/shop";
import { readSentCase } from "@/lib/casebook/form/sentCase";
import { advanceDraft, type Draft, type DraftProblem, refuseDraft } from "@/lib/consult/writeUp/draftCase";

/** Takes a write-up one wish further; a save that holds leads to the case, one that does not comes back with its faults. */
export async function writeUp(_: Draft, data: FormData): Promise<Draft> {
  const { bench, casebook } = await getShop();
  const sent = readSentCase(data);
  const draft = advanceDraft(sent, { reader: bench.reader, taken: casebook.cases });
  if (sent.wish !== "save" || draft.problems.length > 0) return draft;
  const saved = await addCase(draft.text);
  if (!saved.case) return refuseDraft(draft, saved.problems);
  redirect(`/casebook/${saved.case.id}?saved=1`);
}

/** Says what would keep a write-up from being saved as it stands. */
export async function checkWriteUp(data: FormData): Promise<readonly DraftProblem[]> {
  const { bench, casebook } = await getShop();
  const sent = readSentCase(data);
  return advanceDraft({ ...sent, wish: "check" }, { reader: bench.reader, taken: casebook.cases }).problems;
}
