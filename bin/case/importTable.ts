import { saveNewCase } from "@/lib/casebook/saveNewCase";
import { formatProblem } from "@/lib/document/contentProblem";
import { guessColumns } from "@/lib/exchange/import/guessColumns";
import { importChoicesSchema } from "@/lib/exchange/import/importChoices";
import { planImport } from "@/lib/exchange/import/planImport";
import { decodeText } from "@/lib/exchange/table/decodeText";
import { readTable } from "@/lib/exchange/table/readTable";
import { buildReader } from "@/lib/reading/reader";
import { fail } from "../fail";
import { openShelf } from "./openShelf";
import { readColumns } from "./readColumns";

type Options = Readonly<{
  columns?: readonly string[] | undefined;
  dates?: string | undefined;
  decimal?: string | undefined;
  incomplete?: string | undefined;
  write: boolean;
}>;

/** Takes a table of old jobs in, row by row, and tells what became of each. */
export function importTable(bytes: Uint8Array, name: string, { columns = [], write, ...said }: Options) {
  const choices = importChoicesSchema.safeParse(said);
  if (!choices.success) {
    const [issue] = choices.error.issues;
    fail(2, `--${issue?.path.join(".")}: ${issue?.message}`);
  }
  const decoded = decodeText(bytes);
  if (!decoded) fail(1, `${name}: found a file that is no text; give a table saved as CSV`);
  const table = readTable(decoded.text, name);
  if (!("rows" in table)) fail(1, formatProblem(table));
  const matching = guessColumns(table.headings, readColumns(columns, table.headings));
  const { folders, vocabulary, casebook, today, mark } = openShelf();
  const ground = { reader: buildReader(vocabulary), cases: casebook.cases, today };
  const plan = planImport(table, matching, choices.data, ground);
  const faults = plan.refused.flatMap(({ line, faults: all }) =>
    all.map(({ column, received, expected }) => ({
      line,
      where: [`line ${line}`, column && `column ${column}`].filter(Boolean).join(", "),
      found: received,
      write: expected,
    })),
  );
  const taken: { line: number; id: string; title: string; status: string; remarks: readonly string[] }[] = [];
  const broken = new Set<number>();
  for (const { line, id, title, status, remarks, text } of plan.ready) {
    const problems = write ? saveNewCase(text, folders.cases, vocabulary, mark).problems : [];
    for (const { field, received, expected } of problems) {
      broken.add(line);
      faults.push({
        line,
        where: [`line ${line}`, field].filter(Boolean).join(", "),
        found: received,
        write: expected,
      });
    }
    if (problems.length === 0) taken.push({ line, id, title, status, remarks });
  }
  return {
    file: name,
    written: write,
    encoding: decoded.encoding,
    separator: table.separator,
    columns: table.headings.map((heading, at) => ({ heading, takenAs: matching[at] ?? null })),
    dates: plan.dates,
    decimal: plan.decimal,
    notes: [
      ...(decoded.encoding === "Latin-1"
        ? ["The bytes are not UTF-8 and were read as Latin-1: look at the accents."]
        : []),
      ...plan.notes,
    ],
    ready: taken.length,
    refused: plan.refused.length + broken.size,
    cases: taken,
    faults,
  };
}
