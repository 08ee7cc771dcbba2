import "server-only";
import { dirname } from "node:path";
import { readPhoto } from "@/lib/casebook/photos/readPhoto";
import { getShop } from "./shop";

/** Reads a photo of a case in one of its sizes; undefined where there is no such case or photo. */
export async function getPhoto(id: string, file: string): Promise<Buffer | undefined> {
  const { casebook, casesFolder } = await getShop();
  const kase = casebook.cases.get(id);
  return kase && readPhoto(kase, dirname(casesFolder), file);
}
