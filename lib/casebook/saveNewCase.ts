import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import type { ContentProblem } from "../document/contentProblem";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Case } from "./caseFile";
import { placeNewFile } from "./keeping/placeNewFile";
import { readCase } from "./readCase";

/** A case that was saved, or all that kept it from being saved. */
export type SavedCase =
  | Readonly<{ case: Case; problems: readonly [] }>
  | Readonly<{ case: undefined; problems: readonly ContentProblem[] }>;

/**
 * Saves a new case under its id, whole or not at all; nothing is ever overwritten.
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
  try {
    mkdirSync(folder, { recursive: true });
    placeNewFile(join(folder, file), Buffer.from(text, "utf8"), mark);
  } catch (error) {
    switch (error instanceof Error && "code" in error ? error.code : undefined) {
      case "EEXIST":
        // The folder itself may be a file that is in the way.
        if (!existsSync(join(folder, file))) throw error;
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
  }
  return { case: { ...reading.case, file }, problems: [] };
}
