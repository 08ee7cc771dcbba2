"use server";

import { redirect } from "next/navigation";
import { addPhotos } from "@/app/_data/addPhotos";
import { keepSheet } from "@/app/_data/keepSheet";
import { reviseSheet } from "@/app/_data/reviseSheet";
import { getShop } from "@/app/_data/shop";
import { benchFields } from "@/app/add/_components/benchFields";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { formatProblem } from "@/lib/document/contentProblem";
import { answerOf, type SheetAnswer } from "./sheetAnswer";

/** Takes an open job one wish further; what cannot be done comes back with all that was typed. */
export async function takeSheetOn(_: SheetAnswer, data: FormData): Promise<SheetAnswer> {
  const sent = readSentSheet(data);
  const revised = await reviseSheet(sent);
  if (revised.kind !== "saved") return answerOf(revised, data);
  const { id, status } = revised.case;
  const photo = sent.photo ? `&photo=${sent.photo}` : "";
  const isOlderHarm = sent.form.steps[0]?.found === "harm" && sent.harmStep !== "";
  const done = sent.wish === "log" && isOlderHarm ? "harm" : sent.wish;
  redirect(status === "closed" ? `/casebook/${id}?saved=1` : `/sheets/${id}?done=${done}${photo}`);
}

/** Takes photos to an open job; what is refused comes back in words, and then none of them is taken. */
export async function takePhotosIn(_: SheetAnswer, data: FormData): Promise<SheetAnswer> {
  const files = data
    .getAll("picture")
    .flatMap((one) => (one instanceof File && one.name !== "" ? [one] : []));
  const sent = readSentSheet(data);
  const revised = await addPhotos(sent, files);
  if (revised.kind !== "saved") return answerOf(revised, data);
  redirect(`/sheets/${revised.case.id}?done=${sent.wish}`);
}

/** Keeps what is on the bench as the sheet of a job in hand; returns in words what hinders it. */
export async function keepAsSheet(_: string, data: FormData): Promise<string> {
  const { consult } = await getShop();
  const names = [...new Set(data.keys())].filter((name) => !name.startsWith("$"));
  const params = Object.fromEntries(names.map((name) => [name, data.getAll(name).map(String)]));
  const saved = await keepSheet(benchFields(params, consult), new Date().toISOString().slice(0, 10));
  if (!saved.case) return saved.problems.map(formatProblem).join(". ");
  redirect(`/sheets/${saved.case.id}?done=kept`);
}
