import type { ContentProblem } from "../../document/contentProblem";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Case } from "../caseFile";
import { readCase } from "../readCase";
import type { FileKeeper } from "./holdFile";
import type { KeepingPlace } from "./keepingPlace";
import { type FileEdit, type RevisedFile, reviseFile } from "./reviseFile";

/** What a save needs from outside. */
export type Keeper = FileKeeper & Readonly<{ vocabulary: Vocabulary }>;

/** A case that was saved; one that changed under the hands, with both versions; or what keeps it from being saved. */
export type RevisedCase =
  | Readonly<{ kind: "saved"; case: Case; hash: string }>
  | Exclude<RevisedFile, { kind: "saved" }>;

/**
 * Saves a new version of a case in place of the one that was edited, as `reviseFile` has it, once it has been read and holds.
 */
export function reviseCase(edit: FileEdit, place: KeepingPlace, keeper: Keeper): RevisedCase {
  const refuse = (problems: readonly ContentProblem[]): RevisedCase => ({ kind: "refused", problems });
  const reading = readCase(edit.text, place.file, keeper.vocabulary);
  if (!reading.case) return refuse(reading.problems);
  const { id } = reading.case;
  if (id !== place.id) {
    const expected = `'${place.id}', its own id`;
    return refuse([{ file: place.file, line: 0, field: "id", received: `'${id}'`, expected }]);
  }
  const revised = reviseFile(edit, place, keeper);
  return revised.kind === "saved" ? { ...revised, case: { ...reading.case, file: place.file } } : revised;
}
