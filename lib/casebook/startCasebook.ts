import { mkdirSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { codeOf } from "./keeping/diskFault";

/** What stood in the way of an empty casebook; undefined where there was nothing and it has been started. */
export type StartFault = Readonly<{ received: string; expected: string }>;

/**
 * Starts an empty casebook of one's own: a folder with a folder for cases and one for photos. Nothing that is there already is
 * touched; a folder that has cases is refused.
 *
 * @param content the folder; made where it is missing
 */
export function startCasebook(content: string): StartFault | undefined {
  const status = statSync(content, { throwIfNoEntry: false });
  if (status && !status.isDirectory())
    return { received: "a file of that name", expected: "a folder, or a name that is free" };
  const count = casesIn(join(content, "cases"));
  if (count > 0)
    return { received: `a casebook with ${count} cases`, expected: "another folder for the empty one" };
  for (const folder of ["cases", "photos"]) mkdirSync(join(content, folder), { recursive: true });
  return undefined;
}

function casesIn(folder: string): number {
  try {
    return readdirSync(folder).filter((name) => name.endsWith(".md")).length;
  } catch (error) {
    if (codeOf(error) === "ENOENT") return 0;
    throw error;
  }
}
