"use server";

import { bringBackZip } from "@/app/_data/bringBackZip";
import { getShop } from "@/app/_data/shop";
import { takeRows } from "@/app/_data/takeRows";
import type { BringBackState } from "@/lib/exchange/copies/bringBack";
import { advanceImport, readyRows } from "@/lib/exchange/import/advanceImport";
import type { ImportGround } from "@/lib/exchange/import/planImport";
import { readSentImport } from "@/lib/exchange/import/sentImport";
import { type RowToTake, rowsToTakeSchema, type TakenRow } from "@/lib/exchange/rows/takenRow";
import type { BringInState } from "./_components/bringInState";

/** Takes a table of old jobs one wish further; without JavaScript also all the way in. */
export async function bringIn({ draft }: BringInState, data: FormData): Promise<BringInState> {
  const sent = await readSentImport(data, draft.source);
  const ground = await groundNow();
  const next = advanceImport(sent, ground);
  if (sent.wish !== "take") return { draft: next, taken: undefined };
  return { draft: next, taken: await takeRows(readyRows(sent, ground)) };
}

/** The case files of all rows that can be taken in now, to be sent back a few at a time. */
export async function prepareRows(source: unknown, data: FormData): Promise<readonly RowToTake[]> {
  const sent = await readSentImport(data, source);
  return readyRows(sent, await groundNow()).map(({ line, text }) => ({ line, text }));
}

/** Takes a few rows in. */
export async function takeSome(rows: unknown): Promise<readonly TakenRow[]> {
  return takeRows(rowsToTakeSchema.parse(rows));
}

/** Looks at a zip of a casebook, or takes it in once it was looked at. */
export async function bringZipBack(_: BringBackState, data: FormData): Promise<BringBackState> {
  return bringBackZip(data);
}

async function groundNow(): Promise<ImportGround> {
  const { bench, casebook } = await getShop();
  return { reader: bench.reader, cases: casebook.cases, today: new Date().toISOString().slice(0, 10) };
}
