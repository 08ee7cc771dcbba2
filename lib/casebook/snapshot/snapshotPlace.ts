import { createHash } from "node:crypto";
import { dirname, join, resolve } from "node:path";
import type { ContentFolders } from "../files/contentFolder";

/**
 * From so many cases parsed on a snapshot is written: they take about a third of a second. A casebook of fewer never has one.
 * Chosen.
 */
const worthWriting = 1000;

/** Where a casebook's snapshot lies, with what the writing of one needs from outside. */
export type SnapshotPlace = Readonly<{
  path: string;
  /** The clock when the loading began, in milliseconds since 1970. */
  nowMs: number;
  /** A word that no other program uses at the same time, for the name of the file while it is written. */
  mark: string;
  /** How many cases must have been parsed, or indexed, for the writing to pay. */
  worthWriting: number;
}>;

/**
 * Names the place of a casebook's snapshot: in the folder that `BENCHLORE_CACHE` names, by default `.benchlore` beside the
 * content, never in it. Two casebooks never share one. All that lies there may be deleted at any time.
 *
 * @returns undefined for `BENCHLORE_CACHE=none`: no snapshot is read or written
 */
export function snapshotPlace(
  { content, cases }: Pick<ContentFolders, "content" | "cases">,
  environment: Readonly<Record<string, string | undefined>>,
  { nowMs, mark }: Pick<SnapshotPlace, "nowMs" | "mark">,
): SnapshotPlace | undefined {
  const setting = environment.BENCHLORE_CACHE;
  if (setting === "none") return undefined;
  const folder = setting ? resolve(setting) : join(dirname(content), ".benchlore");
  const name = createHash("sha256").update(cases).digest("hex").slice(0, 16);
  return { path: join(folder, `cases-${name}.ndjson`), nowMs, mark, worthWriting };
}
