import type { Case } from "../../casebook/caseFile";
import { caseSchema } from "../../casebook/caseFile";
import { findCaseFaults } from "../../casebook/findCaseFaults";
import { idProposer } from "../../casebook/form/proposeId";
import { placeOfStepKind } from "../../casebook/step";
import { writeCase } from "../../casebook/writeCase";
import { explainIssues } from "../../document/explainIssues";
import type { Reader } from "../../reading/reader";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { entryReader } from "../rows/entryReader";
import { knownJobs } from "../rows/knownJobs";
import { type RowCase, rowCase } from "../rows/rowCase";
import { type RowReader, rowReader } from "../rows/rowReader";
import type { ReadTable, TableRow } from "../table/readTable";
import type { ImportChoices } from "./importChoices";
import { type ImportField, isImportField, type Matching } from "./importField";
import type { ImportPlan, ReadyRow, RefusedRow, RowFault } from "./importPlan";

/** What old jobs are held against; `today` is year-month-day. */
export type ImportGround = Readonly<{ reader: Reader; cases: ReadonlyMap<string, Case>; today: string }>;

/**
 * Plans the taking in of a table of old jobs: each row becomes a whole case file, checked as any new case is, or is refused
 * with all its faults. Nothing is written. Rows without a number get the next ones of their year; a row whose number a case
 * has, or that tells of the same instrument, day and complaint as a case does, is refused: it is in the casebook already.
 *
 * @returns rows in the order of the file; the same plan for the same input
 */
export function planImport(
  table: ReadTable,
  matching: Matching,
  choices: ImportChoices,
  { reader, cases, today }: ImportGround,
): ImportPlan {
  const { vocabulary } = reader;
  const rows = rowReader(table, matching, choices, today);
  const entries = entryReader(reader);
  const read = table.rows.map((row) => ({ row, kase: rowCase(row, rows, entries, vocabulary) }));
  const given = read.flatMap(({ kase }) => (typeof kase.fields.id === "string" ? [kase.fields.id] : []));
  const propose = idProposer([...cases.keys(), ...given]);
  const isKnownJob = knownJobs(cases.values());
  const lineOfId = new Map<string, number>();
  const ready: ReadyRow[] = [];
  const refused: RefusedRow[] = [];

  for (const { row, kase } of read) {
    const asOpen = choices.incomplete === "open" && (kase.doubts.length > 0 || isUnfinished(kase.fields));
    const fields: RowCase["fields"] = { ...kase.fields, ...(asOpen ? { status: "open" } : {}) };
    const id = typeof fields.id === "string" ? fields.id : undefined;
    const faults = [
      ...kase.faults,
      ...(asOpen ? [] : kase.doubts),
      ...wholeFaults({ id: "new", ...defined(fields) }, kase, row, rows, vocabulary),
    ];
    const before = id === undefined ? undefined : lineOfId.get(id);
    const column = rows.column("id");
    if (id !== undefined && cases.has(id))
      faults.push({ column, received: `'${id}', which another case has`, expected: "a number of its own" });
    else if (before !== undefined)
      faults.push({ column, received: `'${id}', as in line ${before}`, expected: "a number of its own" });
    const known = faults.length > 0 || id !== undefined ? undefined : isKnownJob(fields);
    if (known !== undefined)
      faults.push({
        column: "",
        received: `the job that is case ${known} already`,
        expected: "new jobs only",
      });
    const [first, ...more] = faults;
    if (first) {
      refused.push({ line: row.line, cells: row.cells, faults: [first, ...more] });
      continue;
    }
    const named = { ...fields, id: id ?? propose(String(fields.received)) };
    lineOfId.set(named.id, row.line);
    // What the schema makes of it is what is told: it has been checked against it.
    const sound = caseSchema.parse(defined(named));
    ready.push({
      line: row.line,
      id: sound.id,
      title: sound.title,
      status: sound.status,
      instrument: sound.instrument,
      received: sound.received,
      remarks: asOpen
        ? [...kase.remarks, "taken in as an open sheet: it says too little for a finished case"]
        : kase.remarks,
      text: writeCase(defined(named), kase.story),
    });
  }
  const notes = rows.has("closed")
    ? []
    : ["No column says when a job was closed: the day it was taken in stands for it."];
  return { ready, refused, dates: rows.dates, decimal: rows.decimal, notes };
}

/** Faults that only the case as a whole shows, each told once and under its column. */
function wholeFaults(
  fields: Readonly<Record<string, unknown>>,
  { faults, doubts }: RowCase,
  { line }: TableRow,
  rows: RowReader,
  vocabulary: Vocabulary,
): RowFault[] {
  const parsed = caseSchema.safeParse(fields);
  const found = parsed.success
    ? findCaseFaults(parsed.data, vocabulary).map((fault) => ({
        ...fault,
        field: fault.path.map(String).join("."),
      }))
    : explainIssues(parsed.error.issues, fields, { file: "", lineOf: () => line, branchOf: placeOfStepKind });
  const told = new Set([...faults, ...doubts].map(({ column }) => column));
  return found.flatMap(({ field, received, expected }) => {
    const column = rows.column(fieldOf(field));
    return column !== "" && told.has(column) ? [] : [{ column: column || field, received, expected }];
  });
}

function fieldOf(dotted: string): ImportField | undefined {
  const [top = "", , below = ""] = dotted.split(".");
  if (top === "causes") return below === "part" ? "part" : "cause";
  return isImportField(top) ? top : undefined;
}

const isUnfinished = ({ status, closed, outcome, minutes, causes }: RowCase["fields"]) =>
  status === "closed" &&
  (closed === undefined ||
    outcome === undefined ||
    minutes === undefined ||
    (outcome !== "declined" && Array.isArray(causes) && causes.length === 0));

const defined = <Fields extends object>(fields: Fields) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
