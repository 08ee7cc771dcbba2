import { join } from "node:path";
import { fileTypeFromBuffer } from "file-type";
import { realDisk } from "../keeping/disk";
import { codeOf, diskFault } from "../keeping/diskFault";
import { placeNewFile } from "../keeping/placeNewFile";
import type { ArchiveTaking, TakenFile } from "./archiveTaking";
import type { Archive } from "./openArchive";
import { readIfThere } from "./readIfThere";

const pictureTypes = new Set(["image/jpeg", "image/png", "image/webp", "image/avif", "image/gif"]);

/** Takes one picture of an archive in, where its bytes are those of a picture; see `takeArchive`. */
export async function takeArchivedPhoto(
  { path, segments, read }: Archive["photos"][number],
  { folders, write, mark }: ArchiveTaking,
): Promise<TakenFile> {
  const refuse = (received: string, expected: string): TakenFile => ({
    path,
    state: "refused",
    problems: [{ file: path, line: 0, field: "", received, expected }],
  });
  const bytes = read();
  const type = await fileTypeFromBuffer(bytes);
  if (!type || !pictureTypes.has(type.mime))
    return refuse(
      type ? `a file of type ${type.mime}` : "no picture",
      "a JPEG, PNG, WebP, AVIF or GIF picture",
    );
  const photos = join(folders.content, "photos");
  const standing = readIfThere(join(photos, ...segments));
  if (standing)
    return Buffer.compare(standing, bytes) === 0
      ? { path, state: "there already" }
      : refuse("another picture of this name in the casebook", "a name of its own");
  if (!write) return { path, state: "new" };
  try {
    // From above, each looked at, so that nothing is written where a link leads.
    for (let depth = 0; depth < segments.length; depth++)
      realDisk.makeFolder(join(photos, ...segments.slice(0, depth)));
    placeNewFile(join(photos, ...segments), bytes, mark);
    return { path, state: "new" };
  } catch (error) {
    if (codeOf(error) === "EEXIST") return refuse("another picture of this name", "a name of its own");
    const fault = diskFault(error, photos);
    if (!fault) throw error;
    return refuse(fault.received, fault.expected);
  }
}
