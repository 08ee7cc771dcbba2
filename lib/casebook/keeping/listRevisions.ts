import { readdirSync } from "node:fs";
import { codeOf } from "./diskFault";
import type { KeepingPlace } from "./keepingPlace";
import { parseRevisionName, type Revision } from "./revisionName";

/**
 * Lists the versions of a case that are kept, the last one first. Order is that of keeping: a clock that went back does not
 * change it.
 */
export function listRevisions({ revisions }: Pick<KeepingPlace, "revisions">): Revision[] {
  try {
    return readdirSync(revisions)
      .flatMap((name) => parseRevisionName(name) ?? [])
      .sort((a, b) => b.number - a.number);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return [];
    throw error;
  }
}
