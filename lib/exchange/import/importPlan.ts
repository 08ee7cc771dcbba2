import type { CaseFields } from "../../casebook/caseFile";
import type { DecimalMark } from "../cells/amountReadings";
import type { DayOrder } from "../cells/dayReadings";
import type { SettledWay } from "../cells/settleWay";

/** What keeps a row from being taken in, by the heading of its column; empty where no one column is at fault. */
export type RowFault = Readonly<{ column: string; received: string; expected: string }>;

/** A job as it would be taken in: `text` is the case file. */
export type ReadyRow = Readonly<{
  line: number;
  id: string;
  title: string;
  status: CaseFields["status"];
  instrument: string;
  received: string;
  /** What was done with the row that does not show in the table it came from. */
  remarks: readonly string[];
  text: string;
}>;
export type RefusedRow = Readonly<{
  line: number;
  cells: readonly string[];
  faults: readonly [RowFault, ...RowFault[]];
}>;

/** What becomes of a table of old jobs, before anything is written. */
export type ImportPlan = Readonly<{
  ready: readonly ReadyRow[];
  refused: readonly RefusedRow[];
  dates: SettledWay<DayOrder>;
  decimal: SettledWay<DecimalMark>;
  /** What holds for the whole file. */
  notes: readonly string[];
}>;
