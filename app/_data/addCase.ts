import "server-only";
import { randomUUID } from "node:crypto";
import { type SavedCase, saveNewCase } from "@/lib/casebook/saveNewCase";
import { takeInCase } from "@/lib/consult/bench";
import { getShop } from "./shop";

/** Saves a new case and takes it into the running bench, so that the next search and the next consultation find it. */
export async function addCase(text: string): Promise<SavedCase> {
  const { vocabulary, casesFolder } = await getShop();
  const saved = saveNewCase(text, casesFolder, vocabulary, randomUUID());
  const open = globalThis.benchloreShop;
  if (saved.case && open) {
    globalThis.benchloreShop = {
      ...open,
      bench: takeInCase(open.bench, saved.case),
      casebook: { ...open.casebook, cases: new Map([...open.casebook.cases, [saved.case.id, saved.case]]) },
    };
  }
  return saved;
}
