"use server";

import { redirect } from "next/navigation";
import { settleWord } from "@/app/_data/settleWord";
import { wordChangeSchema } from "@/lib/vocabulary/wordChange";

/** Settles what becomes of a word that the cases contradict; the page then says how it went. */
export async function decideWord(data: FormData): Promise<void> {
  const change = wordChangeSchema.safeParse({
    cause: data.get("cause"),
    others: data.get("others") === "yes",
    check: data.get("check"),
    outcome: data.get("outcome"),
    word: data.get("word"),
    proposed: data.get("proposed"),
  });
  if (!change.success) redirect("/handbook/words?went=moved");
  const went = await settleWord(change.data, data.get("wish") === "take" ? "take" : "decline");
  redirect(`/handbook/words?went=${went}`);
}
