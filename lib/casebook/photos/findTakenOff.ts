import { readFrontMatter } from "../../document/readFrontMatter";
import { groupOf, listOf } from "../form/fieldTexts";
import type { KeepingPlace } from "../keeping/keepingPlace";
import { readRevision } from "../keeping/readRevision";
import type { Revision } from "../keeping/revisionName";
import { type Photo, photoSchema } from "./photo";

/** A photo that a sheet no longer names, as an earlier version named it, and its place in the list, from 0. */
export type TakenOff = Readonly<{ photo: Photo; at: number }>;

/**
 * Finds a photo in the latest version of a case that named it, so that it can be put back as it was.
 *
 * @param revisions the latest first
 * @param file what is asked for, from outside: it is only compared
 */
export function findTakenOff(
  place: KeepingPlace,
  revisions: readonly Revision[],
  file: string,
): TakenOff | undefined {
  for (const { number } of revisions) {
    const { data } = readFrontMatter(readRevision(place, number) ?? "", place.file);
    const photos = listOf(groupOf(data).photos).map((photo) => photoSchema.safeParse(photo).data);
    const at = photos.findIndex((photo) => photo?.file === file);
    const photo = photos[at];
    if (photo) return { photo, at };
  }
  return undefined;
}
