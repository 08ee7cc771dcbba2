import { lstatSync } from "node:fs";
import { join } from "node:path";
import { type Disk, realDisk } from "../keeping/disk";
import { type DiskFault, diskFault } from "../keeping/diskFault";
import { thumbOf } from "./photo";
import type { MadePhoto } from "./preparePhoto";

/**
 * Puts a photo's two sizes among those of its case, each whole or not at all: written and flushed beside its place, then
 * renamed into it. The name says what is in it, so a photo that is there already is left as it is.
 *
 * @param folder from `photosPlace`; made where it is missing
 * @param mark a word that no other save uses at the same time
 * @returns undefined where it is kept; else what the disk has against it
 */
export function keepPhoto(
  { file, large, thumb }: Pick<MadePhoto, "file" | "large" | "thumb">,
  folder: string,
  mark: string,
  disk: Disk = realDisk,
): DiskFault | undefined {
  const half = join(folder, `.${file}.${mark}.half`);
  try {
    disk.makeFolder(folder);
    // The small one first: where the large one stands, both do.
    for (const [name, bytes] of [
      [thumbOf(file), thumb],
      [file, large],
    ] as const) {
      if (isThere(join(folder, name), bytes.length)) continue;
      try {
        disk.writeWhole(half, bytes);
        disk.rename(half, join(folder, name));
      } finally {
        disk.remove(half);
      }
    }
    disk.flushFolder(folder);
    return undefined;
  } catch (error) {
    const fault = diskFault(error, folder);
    if (!fault) throw error;
    return fault;
  }
}

/** Whether a file of that length stands there; a link does not count as one. */
function isThere(path: string, length: number): boolean {
  const status = lstatSync(path, { throwIfNoEntry: false });
  return status?.isFile() === true && status.size === length;
}
