import { lstatSync } from "node:fs";
import { join } from "node:path";
import { photoFileSchema, thumbOf } from "./photo";

/** Whether both sizes of a photo lie in a case's folder as files; a link to elsewhere is none. */
export function hasPhoto(folder: string, file: string): boolean {
  if (!photoFileSchema.safeParse(file).success) return false;
  return [file, thumbOf(file)].every(
    (name) => lstatSync(join(folder, name), { throwIfNoEntry: false })?.isFile() === true,
  );
}
