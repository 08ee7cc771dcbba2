import "server-only";
import { randomUUID } from "node:crypto";
import { type BringBackState, bringBack } from "@/lib/exchange/copies/bringBack";
import { getShop } from "./shop";
import { takeIn } from "./takeIn";

/** Looks at a zip of a casebook, or takes it in and its cases into the running bench. */
export async function bringBackZip(data: FormData): Promise<BringBackState> {
  const { folders, casebook, vocabulary } = await getShop();
  return bringBack(data, { folders, casebook, vocabulary, mark: randomUUID(), onSaved: takeIn });
}
