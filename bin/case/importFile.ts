import { basename } from "node:path";
import { fail } from "../fail";
import { importTable } from "./importTable";
import { importZip } from "./importZip";
import { printJson } from "./printJson";
import { readArguments } from "./readArguments";
import { readBytes } from "./readBytes";

const options = {
  columns: { type: "string", multiple: true },
  dates: { type: "string" },
  decimal: { type: "string" },
  incomplete: { type: "string" },
  write: { type: "boolean" },
} as const;

/** Takes in a table of old jobs or an exported zip; only tells what would happen unless it is told to write. */
export async function importFile(args: readonly string[], usage: string): Promise<void> {
  const { values, file } = readArguments(args, options, usage);
  if (file === undefined) fail(2, usage);
  const name = file === "-" ? "standard input" : basename(file);
  const bytes = readBytes(file);
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  const told = isZip
    ? await importZip(bytes, name, values.write === true)
    : importTable(bytes, name, { ...values, write: values.write === true });
  printJson(told);
  if (told.refused === 0) return;
  const [first] = told.faults;
  process.stderr.write(
    `${name}: ${told.refused} of ${told.refused + told.ready} refused; the first: ${first?.where ?? ""} found ${first?.found ?? ""}; write ${first?.write ?? ""}\n`.replace(
      /[\r\n]+(?=.)/g,
      " ",
    ),
  );
  process.exitCode = 1;
}
