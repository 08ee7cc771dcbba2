import { once } from "node:events";
import { closeSync, openSync, rmSync, writeSync } from "node:fs";
import { resolve } from "node:path";
import { exportCasebook, isExportFormat } from "@/lib/exchange/copies/exportCasebook";
import { openShelf } from "./case/openShelf";
import { printJson } from "./case/printJson";
import { readArguments } from "./case/readArguments";
import { fail } from "./fail";

const usage =
  "usage: npm run -s export -- --format csv|json|zip [--to FILE]   (without --to: on standard output)";
const { values, file: extra } = readArguments(
  process.argv.slice(2),
  { format: { type: "string" }, to: { type: "string" } },
  usage,
);
const { format, to } = values;
if (extra !== undefined || format === undefined || !isExportFormat(format)) fail(2, usage);
if (to === undefined && format === "zip" && process.stdout.isTTY) fail(2, `a zip is no text; ${usage}`);

const { folders, casebook } = openShelf();
const { pieces, leftOut } = exportCasebook(format, folders, casebook);
if (to === undefined) {
  for (const piece of pieces) if (!process.stdout.write(piece)) await once(process.stdout, "drain");
} else {
  writeTo(resolve(to), pieces);
  printJson({ file: resolve(to), format, cases: casebook.cases.size, leftOut });
}
if (leftOut.length > 0)
  process.stderr.write(`left out, since they cannot be read or carried: ${leftOut.join(", ")}\n`);

function writeTo(path: string, all: Iterable<Uint8Array>): void {
  let handle: number;
  try {
    handle = openSync(path, "wx");
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    fail(
      1,
      error.code === "EEXIST"
        ? `${path}: found a file there already; name another`
        : `${path}: found ${error.message}; name a place that can be written to`,
    );
  }
  try {
    for (const piece of all)
      for (let written = 0; written < piece.length; ) written += writeSync(handle, piece, written);
  } catch (error) {
    // Half a copy would be taken for a whole one.
    rmSync(path, { force: true });
    throw error;
  } finally {
    closeSync(handle);
  }
}
