import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Case } from "../caseFile";
import { hasPhoto } from "./hasPhoto";
import { thumbOf } from "./photo";
import { photosPlace } from "./photosPlace";

/** Start of image and the next marker's first byte. Source: ITU-T T.81, B.1.1.3. */
const jpegStart = Buffer.from([0xff, 0xd8, 0xff]);

/**
 * Reads a photo in one of its sizes. What was asked for is looked up among those that the case names; a path is built from
 * the entry that was found and never from the question.
 *
 * @param asked the name of a size, from outside
 * @returns the JPEG's bytes; undefined where the case names no such photo, or its files are not there or no JPEG
 */
export function readPhoto(
  { id, photos = [] }: Pick<Case, "id" | "photos">,
  content: string,
  asked: string,
): Buffer | undefined {
  const folder = photosPlace(content, id);
  const found = photos.find(({ file }) => asked === file || asked === thumbOf(file));
  if (!found || !hasPhoto(folder, found.file)) return undefined;
  const bytes = readFileSync(join(folder, asked === found.file ? found.file : thumbOf(found.file)));
  // What was put there by hand, or came in a zip, is served as a JPEG only if it is one.
  return bytes.subarray(0, jpegStart.length).equals(jpegStart) ? bytes : undefined;
}
