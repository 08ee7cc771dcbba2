import { type ImportDraft, nothingChosen } from "@/lib/exchange/import/importDraft";
import type { TakenRow } from "@/lib/exchange/rows/takenRow";

/** How far a table of old jobs has come, and what became of its rows where it was taken in. */
export type BringInState = Readonly<{ draft: ImportDraft; taken: readonly TakenRow[] | undefined }>;

export const nothingYet: BringInState = { draft: nothingChosen, taken: undefined };
