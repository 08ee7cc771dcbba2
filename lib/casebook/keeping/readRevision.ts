import { readFileSync } from "node:fs";
import { join } from "node:path";
import { contentHash } from "./contentHash";
import type { KeepingPlace } from "./keepingPlace";
import { listRevisions } from "./listRevisions";
import { formatRevisionName, shortHash } from "./revisionName";

/**
 * Reads a version that is kept, found by its number in the list and never by a name from outside.
 *
 * @returns undefined where there is no such version, or where its bytes are no longer those that were kept
 */
export function readRevision(place: KeepingPlace, number: number): string | undefined {
  const revision = listRevisions(place).find((one) => one.number === number);
  if (!revision) return undefined;
  const bytes = readFileSync(join(place.revisions, formatRevisionName(revision)));
  return shortHash(contentHash(bytes)) === revision.hash ? bytes.toString("utf8") : undefined;
}
