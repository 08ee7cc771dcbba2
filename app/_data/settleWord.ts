import "server-only";
import { randomUUID } from "node:crypto";
import { dirname } from "node:path";
import { declineWord } from "@/lib/casebook/keeping/declineWord";
import { diskFault } from "@/lib/casebook/keeping/diskFault";
import { loadDeclinedWords } from "@/lib/casebook/keeping/loadDeclinedWords";
import { reviseWord } from "@/lib/casebook/keeping/reviseWord";
import type { DeclinedWords } from "@/lib/vocabulary/declinedWords";
import type { WordChange } from "@/lib/vocabulary/wordChange";
import { openShop } from "./openShop";
import { getShop } from "./shop";

/** How a decision about a word went; `shipped` where the vocabulary is not the shop's own, `disk` where it cannot be written. */
export type SettledWord = "taken" | "declined" | "moved" | "busy" | "broken" | "shipped" | "disk";

/** The changes of words that were decided against. */
export async function getDeclinedWords(): Promise<DeclinedWords> {
  await getShop();
  return loadDeclinedWords(globalThis.benchloreShop?.folders.content ?? "");
}

/** Takes a word over into the handbook's file and the running shop, or remembers that it stays. */
export async function settleWord(change: WordChange, wish: "take" | "decline"): Promise<SettledWord> {
  await getShop();
  const folders = globalThis.benchloreShop?.folders;
  if (!folders) throw new Error("the shop must be open; it is not; load it first");
  const { content, vocabulary } = folders;
  try {
    if (wish === "decline") {
      const declined = declineWord(change, content, { mark: randomUUID() });
      return declined === "saved" ? "declined" : declined;
    }
    if (dirname(vocabulary) !== content) return "shipped";
    const revised = reviseWord(change, vocabulary, { mark: randomUUID() });
    if (revised !== "saved") return revised;
    globalThis.benchloreShop = openShop();
    return "taken";
  } catch (error) {
    if (diskFault(error, content)) return "disk";
    throw error;
  }
}
