import type { KeptCase } from "../keptCase";

/** How a file stood when it was read: its size in bytes, when its content and when its entry in the folder last changed. */
export type FileStatus = Readonly<{ size: number; mtimeMs: number; ctimeMs: number }>;

/** A case with how the file stood that it was read from, and the SHA-256 of its bytes. */
export type SnapshotEntry = KeptCase & Readonly<{ status: FileStatus; hash: string }>;

/** What a snapshot rests on: where any of it is another, the snapshot, or each of its cases, has to be looked at again. */
export type SnapshotHead = Readonly<{
  /** See `formatStamp`. */
  format: string;
  /** See `vocabularyStamp`. */
  vocabulary: string;
  /** The clock before the first file was read, in milliseconds since 1970. */
  takenMs: number;
}>;

/** The cases of a casebook as they were read, by file name. Only sound ones: a file with problems is read each time. */
export type Snapshot = Readonly<{ head: SnapshotHead; entries: ReadonlyMap<string, SnapshotEntry> }>;
