import { join, resolve } from "node:path";
import { blankCase } from "@/lib/casebook/blankCase";
import { proposeId } from "@/lib/casebook/form/proposeId";
import { codeOf } from "@/lib/casebook/keeping/diskFault";
import { placeNewFile } from "@/lib/casebook/keeping/placeNewFile";
import { saveNewCase } from "@/lib/casebook/saveNewCase";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { formatProblem } from "@/lib/document/contentProblem";
import { buildReader } from "@/lib/reading/reader";
import { readInstrument } from "@/lib/reading/readInstrument";
import { fail } from "../fail";
import { openShelf } from "./openShelf";
import { printJson } from "./printJson";
import { readArguments } from "./readArguments";

/** Starts an open bench sheet in the casebook, or an empty case file at a place that is named, to be filled in and added. */
export function newCase(args: readonly string[], usage: string): void {
  const options = { instrument: { type: "string" }, says: { type: "string" } } as const;
  const { values, file } = readArguments(args, options, usage);
  const { folders, vocabulary, casebook, today, mark } = openShelf();
  if (file !== undefined) {
    const id = proposeId(casebook.cases.keys(), today);
    writeBlank(resolve(file), blankCase(id, today), mark);
    printJson({ id, file: resolve(file), next: `fill it in, then: npm run -s case -- add ${file}` });
    return;
  }
  const instrument =
    values.instrument === undefined ? undefined : readInstrument(values.instrument, buildReader(vocabulary));
  if (values.instrument !== undefined && instrument === undefined)
    fail(1, `--instrument: found '${values.instrument}'; write an instrument that the vocabulary knows`);
  const fields = {
    ...(instrument ? { instrument } : {}),
    ...(values.says ? { complaint: values.says } : {}),
  };
  const { text } = newSheet(fields, vocabulary, casebook.cases.keys(), today);
  const saved = saveNewCase(text, folders.cases, vocabulary, mark);
  if (!saved.case) fail(1, saved.problems.map(formatProblem).join("; "));
  const { id, status } = saved.case;
  printJson({ id, status, file: join(folders.cases, saved.case.file) });
}

function writeBlank(path: string, text: string, mark: string): void {
  try {
    placeNewFile(path, Buffer.from(text, "utf8"), mark);
  } catch (error) {
    const code = codeOf(error);
    if (code === undefined) throw error;
    fail(
      1,
      code === "EEXIST"
        ? `${path}: found a file there already; name another`
        : `${path}: found ${code}; name a place that can be written to`,
    );
  }
}
