import "server-only";
import { setImmediate } from "node:timers/promises";
import type { RowToTake, TakenRow } from "@/lib/exchange/rows/takenRow";
import { addCase } from "./addCase";

/** Saves old jobs one after another, each whole or not at all, between whatever else there is to do. */
export async function takeRows(rows: readonly RowToTake[]): Promise<TakenRow[]> {
  const taken: TakenRow[] = [];
  for (const { line, text } of rows) {
    const { case: kase, problems } = await addCase(text);
    const faults = problems.map(({ field, received, expected }) => ({ column: field, received, expected }));
    taken.push(kase ? { line, id: kase.id, faults: [] } : { line, id: undefined, faults });
    await setImmediate();
  }
  return taken;
}
