import { join } from "node:path";
import { contentHash } from "./contentHash";
import type { Disk } from "./disk";
import type { KeepingPlace } from "./keepingPlace";
import { listRevisions } from "./listRevisions";
import { formatRevisionName, type Revision, shortHash, stampOf } from "./revisionName";

type Keeping = Readonly<{
  disk: Disk;
  nowMs: number;
  /** The name of the file while it is written; nobody else writes to it. */
  half: string;
  aside?: boolean;
}>;

/**
 * Keeps a version of a case under the next number; the version kept last is not kept twice over. Call it with the case's
 * lock held.
 */
export function keepRevision(
  place: KeepingPlace,
  bytes: Uint8Array,
  { disk, nowMs, half, aside = false }: Keeping,
): Revision {
  const [last] = listRevisions(place);
  const hash = shortHash(contentHash(bytes));
  if (last?.hash === hash && last.aside === aside) return last;
  const revision = { number: (last?.number ?? 0) + 1, at: stampOf(nowMs), hash, aside };
  try {
    disk.writeWhole(half, bytes);
    disk.rename(half, join(place.revisions, formatRevisionName(revision)));
  } finally {
    disk.remove(half);
  }
  disk.flushFolder(place.revisions);
  return revision;
}
