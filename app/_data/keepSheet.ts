import "server-only";
import { randomUUID } from "node:crypto";
import type { Fields } from "@/lib/casebook/form/caseForm";
import { type SavedCase, saveNewCase } from "@/lib/casebook/saveNewCase";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { getShop } from "./shop";
import { takeIn } from "./takeIn";

/** As often as another program may take an id in the same moment. */
const mostTries = 5;

/** Begins a bench sheet under the next free id. */
export async function keepSheet(fields: Fields, today: string): Promise<SavedCase> {
  const { vocabulary, casebook, casesFolder } = await getShop();
  const taken = new Set(casebook.cases.keys());
  for (let tries = 1; ; tries++) {
    const { id, text } = newSheet(fields, vocabulary, taken, today);
    const saved = saveNewCase(text, casesFolder, vocabulary, randomUUID());
    if (saved.case) takeIn(saved.case);
    const isTaken = saved.problems.some(({ field, received }) => field === "id" && received.includes(id));
    if (!isTaken || tries === mostTries) return saved;
    taken.add(id);
  }
}
