import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ContentProblem } from "../../document/contentProblem";
import { readFrontMatter } from "../../document/readFrontMatter";
import type { Case } from "../caseFile";
import type { ContentFolders } from "../files/contentFolder";
import { hasPhoto } from "./hasPhoto";
import { photosPlace } from "./photosPlace";

/** Lists the photos that cases name and that are not there, each with its line. The case itself stays in use. */
export function findMissingPhotos(
  cases: Iterable<Case>,
  { content, cases: folder }: Pick<ContentFolders, "content" | "cases">,
): ContentProblem[] {
  return [...cases].flatMap(({ id, file, photos = [] }) => {
    const place = photosPlace(content, id);
    const missing = photos.flatMap((photo, at) => (hasPhoto(place, photo.file) ? [] : [{ ...photo, at }]));
    if (missing.length === 0) return [];
    const { lineOf } = readFrontMatter(readFileSync(join(folder, file), "utf8"), file);
    return missing.map(({ file: name, at }) => ({
      file,
      line: lineOf(["photos", at, "file"]),
      field: `photos.${at}.file`,
      received: `'${name}', which is not in photos/${id} in both its sizes`,
      expected: "the name of a photo that is there, or put its files back",
    }));
  });
}
