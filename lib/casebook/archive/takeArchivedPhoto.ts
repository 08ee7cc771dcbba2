import { join } from "node:path";
import { realDisk } from "../keeping/disk";
import { codeOf, diskFault } from "../keeping/diskFault";
import { placeNewFile } from "../keeping/placeNewFile";
import { findForeignSegment } from "../photos/foreignSegment";
import { nameOfPhoto } from "../photos/nameOfPhoto";
import { photoSides } from "../photos/photoLimits";
import { readPhotoPlace } from "../photos/photoPlace";
import type { ArchiveTaking, TakenFile } from "./archiveTaking";
import type { Archive } from "./openArchive";
import { readIfThere } from "./readIfThere";

/** What to do about a photo that was not made here. */
const onItsSheet =
  "a photo as it is kept here: add it on its job's sheet, and position and camera are taken out";

/**
 * Takes one photo of an archive in, to the byte, where it is as `preparePhoto` made it: under a name of its content, the
 * picture alone. See `takeArchive`.
 */
export function takeArchivedPhoto(
  { path, segments, read }: Archive["photos"][number],
  { folders, write, mark }: ArchiveTaking,
): TakenFile {
  const leave = (state: "differs" | "refused", received: string, expected: string): TakenFile => ({
    path,
    state,
    problems: [{ file: path, line: 0, field: "", received, expected }],
  });
  const refuse = (received: string, expected: string) => leave("refused", received, expected);
  const differs = () => leave("differs", "another picture of this name in the casebook", "a name of its own");
  const bytes = read();
  const place = readPhotoPlace(segments);
  if (!place) return refuse("a picture under a name that no job can give", onItsSheet);
  const foreign = findForeignSegment(bytes, photoSides[place.size]);
  if (foreign !== undefined) return refuse(foreign, onItsSheet);
  if (place.size === "large" && nameOfPhoto(bytes) !== place.file)
    return refuse("a picture that is not the one of its name", onItsSheet);
  const photos = join(folders.content, "photos");
  const standing = readIfThere(join(photos, ...segments));
  if (standing) return Buffer.compare(standing, bytes) === 0 ? { path, state: "there already" } : differs();
  if (!write) return { path, state: "new" };
  try {
    // From above, each looked at, so that nothing is written where a link leads.
    for (let depth = 0; depth < segments.length; depth++)
      realDisk.makeFolder(join(photos, ...segments.slice(0, depth)));
    placeNewFile(join(photos, ...segments), bytes, mark);
    return { path, state: "new" };
  } catch (error) {
    if (codeOf(error) === "EEXIST") return differs();
    const fault = diskFault(error, photos);
    if (!fault) throw error;
    return refuse(fault.received, fault.expected);
  }
}
