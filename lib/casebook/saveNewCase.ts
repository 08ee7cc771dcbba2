import { closeSync, fsyncSync, linkSync, mkdirSync, openSync, rmSync, writeSync } from "node:fs";
import { join } from "node:path";
import type { ContentProblem } from "../document/contentProblem";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Case } from "./caseFile";
import { readCase } from "./readCase";

/** A case that was saved, or all that kept it from being saved. */
export type SavedCase =
  | Readonly<{ case: Case; problems: readonly [] }>
  | Readonly<{ case: undefined; problems: readonly ContentProblem[] }>;

/**
 * Saves a new case under its id, whole or not at all: written and flushed beside its place, then linked into it. The link
 * fails where a file of that name exists already, so nothing is ever overwritten, whoever else is saving.
 *
 * @param text the whole Markdown file; refused with all its problems where it does not hold
 * @param folder the cases folder; made where it is missing
 * @param mark a word that no other save uses at the same time, for the name of the file while it is written
 */
export function saveNewCase(text: string, folder: string, vocabulary: Vocabulary, mark: string): SavedCase {
  const reading = readCase(text, "case.md", vocabulary);
  if (!reading.case) return reading;
  const file = `${reading.case.id}.md`;
  const fault = (field: string, received: string, expected: string): SavedCase => ({
    case: undefined,
    problems: [{ file, line: 0, field, received, expected }],
  });
  const half = join(folder, `.${reading.case.id}.${mark}.half`);
  try {
    mkdirSync(folder, { recursive: true });
    writeThrough(half, text);
    linkSync(half, join(folder, file));
    flushFolder(folder);
  } catch (error) {
    switch (error instanceof Error && "code" in error ? error.code : undefined) {
      case "EEXIST":
        return fault("id", `'${reading.case.id}', which another case has`, "an id of its own");
      case "EACCES":
      case "EPERM":
      case "EROFS":
        return fault(
          "",
          "a folder that may not be written to",
          `leave to write in ${folder}, then save again`,
        );
      case "ENOSPC":
      case "EDQUOT":
        return fault("", "a full disk", "room on the disk, then save again; nothing typed is lost");
      default:
        throw error;
    }
  } finally {
    rmSync(half, { force: true });
  }
  return { case: { ...reading.case, file }, problems: [] };
}

function writeThrough(path: string, text: string): void {
  const handle = openSync(path, "wx");
  try {
    const bytes = Buffer.from(text, "utf8");
    let written = 0;
    while (written < bytes.length) written += writeSync(handle, bytes, written);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Makes the new name itself last through a power cut. */
function flushFolder(folder: string): void {
  const handle = openSync(folder, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
