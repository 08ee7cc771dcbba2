import type { Separator } from "../table/guessSeparator";
import type { ImportField } from "./importField";
import type { ImportPlan, ReadyRow, RowFault } from "./importPlan";
import type { SentImport, TableSource } from "./sentImport";

/** A row as the page shows it; of a refused one everything that is wrong. */
type ShownReady = Omit<ReadyRow, "text">;
type ShownRefused = Readonly<{ line: number; faults: readonly RowFault[] }>;

/** A plan as the page shows it: the first rows of each kind and how many there are. */
export type ShownPlan = Pick<ImportPlan, "dates" | "decimal" | "notes"> &
  Readonly<{
    ready: readonly ShownReady[];
    readyCount: number;
    refused: readonly ShownRefused[];
    refusedCount: number;
    /** The refused rows as a table of their own, to be put right and brought in again; empty where they are too many. */
    leftRows: string;
  }>;

/** A column as the page offers it: its heading, the first cell that says something, and what it is taken as. */
type ShownColumn = Readonly<{ heading: string; sample: string; field: ImportField | undefined }>;

/** A table of old jobs on its way in, as far as it has come. */
export type ImportDraft = Readonly<{
  source: TableSource | undefined;
  fault: string;
  rowCount: number;
  separator: Separator;
  columns: readonly ShownColumn[];
  choices: SentImport["choices"];
  plan: ShownPlan | undefined;
}>;

export const nothingChosen: ImportDraft = {
  source: undefined,
  fault: "",
  rowCount: 0,
  separator: ",",
  columns: [],
  choices: { incomplete: "refuse" },
  plan: undefined,
};
