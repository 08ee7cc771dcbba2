import { idSchema } from "../../vocabulary/words";
import { photoFileSchema } from "./photo";
import type { photoSides } from "./photoLimits";

/** One of the two sizes of a photo by where it lies: the job's id, the photo's name, which size. */
export type PhotoPlace = Readonly<{ id: string; file: string; size: keyof typeof photoSides }>;

/**
 * Tells which photo a file under `photos/` is.
 *
 * @param segments the names of its folders under `photos/` and its own
 * @returns undefined for a file that no job can name
 */
export function readPhotoPlace(segments: readonly string[]): PhotoPlace | undefined {
  const [id = "", name = "", ...more] = segments;
  const file = name.replace(/\.thumb\.jpg$/, ".jpg");
  if (more.length > 0 || !idSchema.safeParse(id).success || !photoFileSchema.safeParse(file).success)
    return undefined;
  return { id, file, size: file === name ? "large" : "thumb" };
}
