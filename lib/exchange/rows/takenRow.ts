import { z } from "zod";
import { longestFile } from "../../document/readFrontMatter";
import type { RowFault } from "../import/importPlan";
import { rowsAtOnce } from "./rowsAtOnce";

/** Rows that are to be taken in now, each with its whole case file. */
export const rowsToTakeSchema = z
  .array(z.object({ line: z.int().min(1), text: z.string().max(longestFile) }))
  .max(rowsAtOnce);
export type RowToTake = z.infer<typeof rowsToTakeSchema>[number];

/** What became of a row: the id of its case, or why it was not saved. */
export type TakenRow = Readonly<{ line: number; id: string | undefined; faults: readonly RowFault[] }>;
