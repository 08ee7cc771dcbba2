import { createHash } from "node:crypto";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Case } from "../caseFile";
import { findCaseFaults } from "../findCaseFaults";
import { type KeptCase, keepCase } from "../keptCase";
import { agreesWithFiles } from "./agreesWithFiles";
import { formatStamp } from "./formatStamp";
import { readSnapshot } from "./readSnapshot";
import type { FileStatus, SnapshotEntry } from "./snapshot";
import type { SnapshotPlace } from "./snapshotPlace";
import { survivesJson } from "./survivesJson";
import { vocabularyStamp } from "./vocabularyStamp";
import { writeSnapshot } from "./writeSnapshot";

/** What is known of case files from an earlier loading, and what of this one is worth knowing at the next. */
export type CaseMemory = Readonly<{
  /** The case of a file that has not been touched since, by its status alone; undefined where it has to be read. */
  recallUntouched: (file: string, status: FileStatus) => KeptCase | undefined;
  /** The case of a file that was touched but still has the same bytes; undefined where it has to be parsed. */
  recallSame: (file: string, status: FileStatus, bytes: Uint8Array) => KeptCase | undefined;
  /** Takes note of a case that was parsed. */
  learn: (file: string, status: FileStatus, bytes: Uint8Array, kase: Case) => void;
  /** The SHA-256 of a file that was recalled or learned; undefined for one whose case a snapshot cannot hold. */
  hashOf: (file: string) => string | undefined;
  /** By the SHA-256 of the file, the cases of the snapshot that were not recalled: their files have changed or gone since. */
  former: () => Map<string, Case>;
  /** Writes the snapshot anew where enough was parsed. */
  save: () => void;
}>;

/** A file changed this shortly before the snapshot may have changed again without its time telling. Coarse clocks have two seconds. */
const clockGrainMs = 2000;

/**
 * Opens the memory of a casebook. A case is recalled only where its file stands as it stood or has the bytes that it had,
 * the snapshot agrees with a sample of the files, and the vocabulary, where it has changed since, still bears it.
 *
 * @param folder the cases folder
 */
export function openCaseMemory(place: SnapshotPlace, folder: string, vocabulary: Vocabulary): CaseMemory {
  const format = formatStamp();
  const stamp = vocabularyStamp(vocabulary);
  const read = readSnapshot(place.path, format);
  const isSameVocabulary = read?.head.vocabulary === stamp;
  const isTrusted = read !== undefined && agreesWithFiles(read, folder, vocabulary, isSameVocabulary);
  const snapshot = isTrusted ? read : undefined;
  const trustedBeforeMs = (snapshot?.head.takenMs ?? 0) - clockGrainMs;
  const entries = new Map<string, SnapshotEntry>();
  let parsed = 0;
  const recall = (file: string, entry: SnapshotEntry) => {
    if (!isSameVocabulary && findCaseFaults(entry.case.value, vocabulary).length > 0) return undefined;
    entries.set(file, entry);
    return entry;
  };
  return {
    recallUntouched: (file, status) => {
      const entry = snapshot?.entries.get(file);
      if (entry === undefined || !isSameStatus(status, entry.status)) return undefined;
      if (Math.max(status.mtimeMs, status.ctimeMs) >= trustedBeforeMs) return undefined;
      return recall(file, entry);
    },
    recallSame: (file, status, bytes) => {
      const entry = snapshot?.entries.get(file);
      if (entry === undefined || entry.status.size !== bytes.length) return undefined;
      if (entry.hash !== digestOf(bytes)) return undefined;
      return recall(file, { ...entry, status: statusOf(status) });
    },
    learn: (file, status, bytes, kase) => {
      parsed += 1;
      if (survivesJson(kase))
        entries.set(file, { ...keepCase(kase), status: statusOf(status), hash: digestOf(bytes) });
    },
    hashOf: (file) => entries.get(file)?.hash,
    former: () => {
      const left = new Map<string, Case>();
      for (const [file, { hash, case: kase }] of snapshot?.entries ?? []) {
        if (entries.get(file)?.hash !== hash) left.set(hash, kase.value);
      }
      return left;
    },
    save: () => {
      if (parsed < place.worthWriting) return;
      writeSnapshot(place, { format, vocabulary: stamp, takenMs: place.nowMs }, entries);
    },
  };
}

const digestOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const statusOf = ({ size, mtimeMs, ctimeMs }: FileStatus) => ({ size, mtimeMs, ctimeMs });
const isSameStatus = (a: FileStatus, b: FileStatus) =>
  a.size === b.size && a.mtimeMs === b.mtimeMs && a.ctimeMs === b.ctimeMs;
