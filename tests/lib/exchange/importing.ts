import type { Case } from "@/lib/casebook/caseFile";
import { guessColumns } from "@/lib/exchange/import/guessColumns";
import type { ImportChoices } from "@/lib/exchange/import/importChoices";
import type { ImportPlan } from "@/lib/exchange/import/importPlan";
import { planImport } from "@/lib/exchange/import/planImport";
import { readTable } from "@/lib/exchange/table/readTable";
import { buildReader } from "@/lib/reading/reader";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

export const smallReader = buildReader(smallVocabulary);
export const today = "2026-11-25";

/** Plans a table against the small vocabulary, its columns guessed. */
export function planText(
  text: string,
  { cases = [], ...choices }: Partial<ImportChoices> & Readonly<{ cases?: readonly Case[] }> = {},
): ImportPlan {
  const table = readTable(text, "jobs.csv");
  if (!("rows" in table)) throw new Error(`the table must be read; got ${table.received}`);
  return planImport(
    table,
    guessColumns(table.headings),
    { incomplete: "refuse", ...choices },
    { reader: smallReader, cases: new Map(cases.map((kase) => [kase.id, kase])), today },
  );
}
