import "server-only";
import { randomUUID } from "node:crypto";
import { type SavedCase, saveNewCase } from "@/lib/casebook/saveNewCase";
import { getShop } from "./shop";
import { takeIn } from "./takeIn";

/** Saves a new case and takes it into the running bench, so that the next search and the next consultation find it. */
export async function addCase(text: string): Promise<SavedCase> {
  const { vocabulary, casesFolder } = await getShop();
  const saved = saveNewCase(text, casesFolder, vocabulary, randomUUID());
  if (saved.case) takeIn(saved.case);
  return saved;
}
