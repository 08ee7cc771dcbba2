import { isDeepStrictEqual } from "node:util";
import type { Case } from "../../casebook/caseFile";
import { readCaseFile } from "../../casebook/loadCasebook";
import { putCase } from "../../casebook/putCase";
import { takeInCase } from "./bench";
import type { OpenBench } from "./openBench";

/**
 * Takes case files that have changed on disk into an open bench, where that can be done without loading all the others again:
 * a sound file that is new or another version of the case that it was. What the bench knows already, such as a case that it
 * saved itself, is passed over.
 *
 * @param files names of files in the cases folder
 * @returns false where all has to be loaded again, since a file is gone, at fault, was at fault before, or is another case
 * now; the bench is then as it was
 */
export function freshenBench({ folders, casebook, bench }: OpenBench, files: Iterable<string>): boolean {
  const changed: Case[] = [];
  const faulty = new Set(casebook.problems.map(({ file }) => file));
  const ids = new Set<string>();
  for (const file of files) {
    const { case: kase, problems } = readCaseFile(folders.cases, file, bench.vocabulary);
    if (!kase || problems.length > 0 || faulty.has(file) || ids.has(kase.id)) return false;
    ids.add(kase.id);
    const known = casebook.cases.get(kase.id);
    if (isDeepStrictEqual(kase, known)) continue;
    if (known ? known.file !== file : isFileOfAnother(casebook.cases.values(), file)) return false;
    changed.push(kase);
  }
  for (const kase of changed) {
    takeInCase(bench, kase);
    putCase(casebook, kase);
  }
  return true;
}

function isFileOfAnother(cases: Iterable<Case>, file: string): boolean {
  for (const kase of cases) if (kase.file === file) return true;
  return false;
}
