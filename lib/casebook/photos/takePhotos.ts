import type { ContentProblem } from "../../document/contentProblem";
import type { Disk } from "../keeping/disk";
import { keepPhoto } from "./keepPhoto";
import { photoLimits } from "./photoLimits";
import { type MadePhoto, preparePhoto } from "./preparePhoto";

/** A picture as it was sent. Its bytes are asked for one picture after another. */
export type SentPhoto = Readonly<{ name: string; bytes: () => Promise<Uint8Array> }>;

/** The names under which photos were kept, or all that keeps them from being so: then none of them is. */
export type TakenPhotos = Readonly<{ files: readonly string[]; problems: readonly ContentProblem[] }>;

/**
 * Takes photos that were sent together, all or none, one after another so that no two are unpacked at once.
 *
 * @param folder from `photosPlace`
 * @param mark a word that no other save uses at the same time
 */
export async function takePhotos(
  sent: readonly SentPhoto[],
  folder: string,
  mark: string,
  disk?: Disk,
): Promise<TakenPhotos> {
  const refuse = (received: string, expected: string): TakenPhotos => ({
    files: [],
    problems: [{ file: "", line: 0, field: "photos", received, expected }],
  });
  if (sent.length === 0) return refuse("none chosen", "at least one photo");
  if (sent.length > photoLimits.atOnce)
    return refuse(`${sent.length} at one go`, `at most ${photoLimits.atOnce}, then the others`);
  const made: MadePhoto[] = [];
  const problems: ContentProblem[] = [];
  for (const { name, bytes } of sent) {
    const photo = await preparePhoto(await bytes(), name);
    if (photo.kind === "made") made.push(photo);
    else
      problems.push({
        file: "",
        line: 0,
        field: "photos",
        received: photo.received,
        expected: photo.expected,
      });
  }
  if (problems.length > 0) return { files: [], problems };
  for (const photo of made) {
    const fault = keepPhoto(photo, folder, mark, disk);
    if (fault) return refuse(fault.received, fault.expected);
  }
  return { files: [...new Set(made.map(({ file }) => file))], problems: [] };
}
