import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Case } from "../caseFile";
import { readCase } from "../readCase";
import type { Snapshot, SnapshotEntry } from "./snapshot";

/** How many files are read anew to see whether they still mean what the snapshot says. Chosen: some ten milliseconds. */
const samples = 25;

/**
 * Reads a few unchanged files anew, spread evenly over the snapshot, and holds the cases against those of the snapshot: a
 * version of Benchlore that reads files otherwise than the one that wrote it does not trust it.
 *
 * @param isSameVocabulary whether the vocabulary is the one by which the snapshot was written; by another a case may be at fault
 * that was sound
 * @returns false where a case differs; files that have changed or gone tell nothing
 */
export function agreesWithFiles(
  { entries }: Snapshot,
  folder: string,
  vocabulary: Vocabulary,
  isSameVocabulary: boolean,
): boolean {
  const stride = Math.max(1, Math.ceil(entries.size / samples));
  return [...entries]
    .filter((_, at) => at % stride === 0)
    .every(([file, entry]) => {
      const kase = readUnchanged(entry, folder, file, vocabulary);
      return (
        kase === "changed" ||
        (kase === "at fault" ? !isSameVocabulary : isDeepStrictEqual(kase, entry.case.value))
      );
    });
}

function readUnchanged(
  entry: SnapshotEntry,
  folder: string,
  file: string,
  vocabulary: Vocabulary,
): Case | "changed" | "at fault" {
  const bytes = readQuietly(join(folder, file));
  if (bytes === undefined || createHash("sha256").update(bytes).digest("hex") !== entry.hash)
    return "changed";
  return readCase(bytes.toString("utf8"), file, vocabulary).case ?? "at fault";
}

function readQuietly(path: string): Buffer | undefined {
  try {
    return readFileSync(path);
  } catch (error) {
    if (error instanceof Error) return undefined;
    throw error;
  }
}
