import { basename, join } from "node:path";
import { idSchema } from "../../vocabulary/words";

/** Where a file of the content lies and where its earlier versions do. */
export type KeepingPlace = Readonly<{
  id: string;
  folder: string;
  file: string;
  path: string;
  revisions: string;
}>;

/** The folder of revisions among the cases; it begins with a dot, so that neither the casebook nor the watch looks into it. */
const revisionsFolder = ".revisions";

/**
 * Names the places of one case, lesson or learner. No path is ever built from anything but an id and a plain file name.
 *
 * @param folder the folder of its kind
 * @param file the name of its file in it; default its id with `.md`
 * @throws when id or file could lead out of the folder
 */
export function keepingPlace(folder: string, id: string, file = `${id}.md`): KeepingPlace {
  if (!idSchema.safeParse(id).success) {
    throw new Error(`an id must be lower-case words joined by hyphens; got ${JSON.stringify(id)}`);
  }
  if (file !== basename(file) || file.startsWith(".") || !file.endsWith(".md") || /[\0\\]/.test(file)) {
    throw new Error(`a file must be a plain name ending in .md; got ${JSON.stringify(file)}`);
  }
  return { id, folder, file, path: join(folder, file), revisions: join(folder, revisionsFolder, id) };
}
