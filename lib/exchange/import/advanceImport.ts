import { type ContentProblem, formatProblem } from "../../document/contentProblem";
import { leftRowsCsv } from "../rows/leftRowsCsv";
import { type ReadTable, readTable } from "../table/readTable";
import { guessColumns } from "./guessColumns";
import { type ImportDraft, nothingChosen, type ShownPlan } from "./importDraft";
import type { Matching } from "./importField";
import type { ImportPlan, ReadyRow } from "./importPlan";
import { type ImportGround, planImport } from "./planImport";
import type { SentImport } from "./sentImport";

const shownReady = 25;
const shownRefused = 100;
const longestSample = 60;
/** What the page holds goes to and fro with every step, so that only so many characters of refused rows go with it. Chosen. */
const longestLeft = 500_000;

/** Takes a table one wish further: reads it and guesses its columns, or tries it with the columns as they were matched. */
export function advanceImport(sent: SentImport, ground: ImportGround): ImportDraft {
  const opened = openTable(sent);
  if (!opened) return { ...nothingChosen, fault: sent.fault };
  if ("problem" in opened) return { ...nothingChosen, fault: formatProblem(opened.problem) };
  const { table, matching } = opened;
  const draft: ImportDraft = {
    source: sent.source,
    fault: "",
    rowCount: table.rows.length,
    separator: table.separator,
    columns: table.headings.map((heading, at) => ({
      heading,
      sample: sampleOf(table, at),
      field: matching[at],
    })),
    choices: sent.choices,
    plan: undefined,
  };
  return sent.wish === "read"
    ? draft
    : { ...draft, plan: showPlan(planImport(table, matching, sent.choices, ground), table) };
}

/** The rows of a table that can be taken in, each with its case file; none where there is no table. */
export function readyRows(sent: SentImport, ground: ImportGround): readonly ReadyRow[] {
  const opened = openTable(sent);
  return opened && "table" in opened
    ? planImport(opened.table, opened.matching, sent.choices, ground).ready
    : [];
}

function openTable({
  source,
  matched,
}: SentImport):
  | Readonly<{ table: ReadTable; matching: Matching }>
  | Readonly<{ problem: ContentProblem }>
  | undefined {
  if (!source) return undefined;
  const table = readTable(source.text, source.name);
  return "rows" in table ? { table, matching: guessColumns(table.headings, matched) } : { problem: table };
}

function showPlan(plan: ImportPlan, table: ReadTable): ShownPlan {
  const left = leftRowsCsv(table.headings, plan.refused);
  const { ready, refused, dates, decimal, notes } = plan;
  return {
    dates,
    decimal,
    notes,
    ready: ready.slice(0, shownReady).map(({ text: _, ...row }) => row),
    readyCount: ready.length,
    refused: refused.slice(0, shownRefused).map(({ line, faults }) => ({ line, faults })),
    refusedCount: refused.length,
    leftRows: left.length > longestLeft ? "" : left,
  };
}

function sampleOf({ rows }: ReadTable, at: number): string {
  const cell = rows.find(({ cells }) => (cells[at] ?? "") !== "")?.cells[at] ?? "";
  const line = cell.replace(/\s+/g, " ");
  return line.length <= longestSample ? line : `${line.slice(0, longestSample - 1)}…`;
}
