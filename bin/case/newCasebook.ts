import { resolve } from "node:path";
import { startCasebook } from "@/lib/casebook/startCasebook";
import { fail } from "../fail";
import { printJson } from "./printJson";
import { readArguments } from "./readArguments";

/** Starts an empty casebook of one's own, without the demo cases. */
export function newCasebook(args: readonly string[], usage: string): void {
  const { file } = readArguments(args, {}, usage);
  if (file === undefined) fail(2, usage);
  const content = resolve(file);
  const fault = startCasebook(content);
  if (fault) fail(1, `${content}: found ${fault.received}; name ${fault.expected}`);
  printJson({ content, cases: 0, next: `BENCHLORE_CONTENT=${content} npm start` });
}
