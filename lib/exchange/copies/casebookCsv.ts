import { stringify } from "csv-stringify/sync";
import type { Case, CaseCause } from "../../casebook/caseFile";
import { isRepairStep } from "../../casebook/step";
import { neutralCell } from "../cells/neutralCell";
import { writtenAmount } from "../cells/writtenAmount";
import { type ImportField, labelOfField } from "../import/importField";

type Column = readonly [heading: string, cell: (kase: Case) => string];

/** The columns of an exported table. Those that old jobs may be taken in by carry the headings that are known then. */
const columns: readonly Column[] = [
  known("id", ({ id }) => id),
  known("title", ({ title }) => title),
  known("status", ({ status }) => status),
  known("instrument", ({ instrument }) => instrument),
  known("maker", ({ maker }) => maker ?? ""),
  known("model", ({ model }) => model ?? ""),
  known("received", ({ received }) => received),
  known("closed", ({ closed }) => closed ?? ""),
  known("complaint", ({ complaint }) => complaint),
  known("arrival", ({ arrival }) => arrival.join("\n")),
  known("cause", (kase) => rootOf(kase)?.cause ?? ""),
  known("part", (kase) => rootOf(kase)?.part ?? ""),
  [
    "Other causes",
    (kase) =>
      kase.causes
        .filter((cause) => cause !== rootOf(kase))
        .map(({ cause, part, role }) => [cause, part && `on ${part}`, `(${role})`].filter(Boolean).join(" "))
        .join("\n"),
  ],
  [
    "Repairs made",
    ({ path }) =>
      path
        .filter(isRepairStep)
        .map(
          ({ repair, part, result }) =>
            `${[repair, part && `on ${part}`].filter(Boolean).join(" ")}: ${result}`,
        )
        .join("\n"),
  ],
  ["Steps", ({ path }) => String(path.length)],
  known("outcome", ({ outcome }) => outcome ?? ""),
  known("minutes", ({ minutes }) => writtenAmount(minutes)),
  known("quotedMinutes", ({ quoted }) => writtenAmount(quoted?.minutes)),
  known("quotedPrice", ({ quoted }) => writtenAmount(quoted?.price)),
  known("charge", ({ charge }) => writtenAmount(charge)),
  known("swallowedMinutes", ({ swallowed }) => writtenAmount(swallowed?.minutes)),
  known("swallowedMoney", ({ swallowed }) => writtenAmount(swallowed?.money)),
  [
    "Harm done",
    ({ harms }) => harms.map(({ repair, what, paidBy }) => `${repair}: ${what} (${paidBy} paid)`).join("\n"),
  ],
  known("lessons", ({ lessons }) => lessons.join("\n")),
  known("story", ({ story }) => story),
];

/**
 * Writes a casebook as a table in CSV for a spreadsheet: a row a case by id, every cell quoted, cells that could begin a
 * formula made harmless. A mark at its beginning tells spreadsheets that it is UTF-8. The whole path does not fit in a row:
 * the JSON and the zip keep it.
 *
 * Source: RFC 4180, section 2; OWASP, CSV Injection (single quote before, quotes around, quotes doubled).
 */
export function casebookCsv(cases: Iterable<Case>): string {
  const sorted = [...cases].sort((a, b) => (a.id < b.id ? -1 : 1));
  const rows = sorted.map((kase) => columns.map(([, cell]) => neutralCell(cell(kase))));
  return stringify([columns.map(([heading]) => heading), ...rows], {
    bom: true,
    quoted: true,
    quoted_empty: true,
    record_delimiter: "windows",
  });
}

function known(field: ImportField, cell: (kase: Case) => string): Column {
  return [labelOfField(field), cell];
}

const rootOf = ({ causes }: Case): CaseCause | undefined => causes.find(({ role }) => role === "root");
