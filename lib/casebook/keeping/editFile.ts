import { join } from "node:path";
import { contentHash } from "./contentHash";
import { type Disk, realDisk } from "./disk";
import { lockCase } from "./lockCase";
import { readKept } from "./readKept";

/** What an edit needs from outside; `mark` is a word that no other edit uses at the same time. */
export type Editor = Readonly<{ mark: string; disk?: Disk }>;

/** `saved`; `left` where the edit wanted no change; `busy` where others wrote to the file all the while. */
export type EditedFile = "saved" | "left" | "busy";

/** Beside the file; it begins with a dot, so that nothing reads it as content. */
const locksFolder = ".locks";

/**
 * Edits a text file as it stands on disk, whole or not at all: read, changed, written and flushed beside its place, and
 * renamed into it where nobody wrote to it meanwhile. Programs that edit through here wait for one another.
 *
 * @param file a plain name in the folder; a file that is not there is empty
 * @param edit the text in its place; undefined leaves it as it is
 * @throws what the disk throws, and a TypeError where the file is not UTF-8
 */
export function editFile(
  { folder, file }: Readonly<{ folder: string; file: string }>,
  edit: (text: string) => string | undefined,
  { mark, disk = realDisk }: Editor,
): EditedFile {
  const place = { file, path: join(folder, file) };
  const locks = join(folder, locksFolder);
  disk.makeFolder(locks);
  const lock = lockCase({ revisions: locks }, { disk, mark });
  if (!lock) return "busy";
  const half = join(folder, `.${file}.${lock.number}.half`);
  try {
    const before = readKept(place);
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(before.bytes);
    const changed = edit(text);
    if (changed === undefined || changed === text) return "left";
    disk.writeWhole(half, Buffer.from(changed, "utf8"));
    const now = readKept(place);
    if (contentHash(now.bytes) !== contentHash(before.bytes) || !lock.isStillMine()) return "busy";
    disk.rename(half, place.path);
    disk.flushFolder(folder);
    return "saved";
  } finally {
    disk.remove(half);
    lock.release();
  }
}
