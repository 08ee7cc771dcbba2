import { basename, dirname, join } from "node:path";
import { type Disk, realDisk } from "./disk";

/**
 * Writes a new file, whole or not at all: written and flushed beside its place, then linked into it. The link fails where
 * something of that name is there already, so nothing is ever overwritten, whoever else is saving.
 *
 * @param path in a folder that is there
 * @param mark a word that no other save uses at the same time, for the name of the file while it is written
 * @throws what the disk throws; `EEXIST` where the name is taken
 */
export function placeNewFile(path: string, bytes: Uint8Array, mark: string, disk: Disk = realDisk): void {
  const folder = dirname(path);
  const half = join(folder, `.${basename(path, ".md")}.${mark}.half`);
  try {
    disk.writeWhole(half, bytes);
    disk.link(half, path);
    disk.flushFolder(folder);
  } finally {
    disk.remove(half);
  }
}
