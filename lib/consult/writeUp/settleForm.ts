import type { CaseForm, StepRow } from "../../casebook/form/caseForm";
import { formatPartRef, parsePartRef } from "../../casebook/partRef";
import { readPart } from "../../reading/parts/readPart";
import { readEvidence } from "../../reading/readEvidence";
import type { Reader } from "../../reading/reader";

/**
 * Reads the bench words in a form's rows: "2nd valve" becomes `valve 2`, an outcome's words its id. What is written as a
 * case file wants it, and what nobody can read, stays as it was typed.
 */
export function settleForm(form: CaseForm, reader: Reader): CaseForm {
  const part = (words: string) => settlePart(words, reader, form.instrument || undefined);
  return {
    ...form,
    steps: form.steps.map((row) =>
      row.what === "kept" ? row : { ...row, part: part(row.part), found: settleFound(row, reader) },
    ),
    causes: form.causes.map((row) => ({ ...row, part: part(row.part) })),
  };
}

function settlePart(words: string, reader: Reader, instrument: string | undefined): string {
  if (words.trim() === "" || parsePartRef(words) !== undefined) return words;
  const ref = readPart(words, reader, instrument);
  return ref ? formatPartRef(ref) : words;
}

function settleFound({ what, found }: StepRow, reader: Reader): string {
  if (found.trim() === "") return found;
  if (what.startsWith("repair ")) return found.trim().toLowerCase().replaceAll(" ", "-");
  const check = reader.vocabulary.checks.get(what.replace(/^check /, ""));
  if (!check || check.outcomes.some(({ id }) => id === found)) return found;
  const plain = found.trim().toLowerCase();
  const named = check.outcomes.find(({ id, label }) => id === plain || label.toLowerCase() === plain);
  if (named) return named.id;
  const { finding: read } = readEvidence({ check: check.id, found }, reader, undefined);
  return read?.check === check.id && !read.doubtful ? read.outcome : found;
}
