import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { formatProblem } from "@/lib/document/contentProblem";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

/** The name of the file that is looked at. */
export const file = "24-001.md";
/** The good case with one run of it changed. */
export const broken = (from: string, to: string) => change(goodCase, from, to);
/** The good case with one line more. */
export const withField = (line: string) => broken("title:", `${line}\ntitle:`);

/** A folder with a good case before the bad one by name and another after it. */
export function folderOfGoodCases(): string {
  const folder = temporaryFolder();
  for (const id of ["23-900", "25-900"]) {
    writeFileSync(join(folder, `${id}.md`), broken("id: 24-001", `id: ${id}`));
  }
  return folder;
}

/** A folder as it is loaded: its cases, their ids, and what is at fault, a line each. */
export function load(folder: string) {
  const { cases, problems } = loadCasebook(folder, smallVocabulary);
  return { cases, ids: [...cases.keys()], lines: problems.map(formatProblem) };
}

/** What becomes of a file with this content between two good ones. */
export function loadBeside(content: string | Uint8Array) {
  const folder = folderOfGoodCases();
  writeFileSync(join(folder, file), content);
  return load(folder);
}

/** A bad file with what is to be said of it. */
export type BadFile = Readonly<{
  title: string;
  content: string | Uint8Array;
  lines: readonly (string | RegExp)[];
}>;
