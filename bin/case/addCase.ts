import { basename, join } from "node:path";
import { readCase } from "@/lib/casebook/readCase";
import { saveNewCase } from "@/lib/casebook/saveNewCase";
import { formatProblem } from "@/lib/document/contentProblem";
import { fail } from "../fail";
import { openShelf } from "./openShelf";
import { printJson } from "./printJson";
import { readArguments } from "./readArguments";
import { readBytes } from "./readBytes";

const utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

/** Takes one case file into the casebook, to the byte, after every check that the page makes too. */
export function addCase(args: readonly string[], usage: string): void {
  const { file } = readArguments(args, {}, usage);
  if (file === undefined) fail(2, usage);
  const name = file === "-" ? "standard input" : basename(file);
  const text = decode(readBytes(file));
  if (text === undefined)
    fail(1, `${name} the file: found bytes that are not UTF-8; write the file saved as UTF-8 text`);
  const { folders, vocabulary, casebook, mark } = openShelf();
  const reading = readCase(text, name, vocabulary);
  if (!reading.case) fail(1, reading.problems.map(formatProblem).join("; "));
  const { id } = reading.case;
  if (casebook.cases.has(id))
    fail(
      1,
      formatProblem({
        file: name,
        line: 2,
        field: "id",
        received: `'${id}', which another case has`,
        expected: "an id of its own",
      }),
    );
  const saved = saveNewCase(text, folders.cases, vocabulary, mark);
  if (!saved.case)
    fail(1, saved.problems.map((problem) => formatProblem({ ...problem, file: name })).join("; "));
  printJson({
    id,
    title: saved.case.title,
    status: saved.case.status,
    file: join(folders.cases, saved.case.file),
  });
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return utf8.decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}
