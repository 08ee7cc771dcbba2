import { join } from "node:path";
import { idSchema } from "../../vocabulary/words";

/**
 * Names the folder of a case's photos. No path is ever built from anything but an id.
 *
 * @param content the content folder
 * @throws when the id could lead out of the folder
 */
export function photosPlace(content: string, id: string): string {
  if (!idSchema.safeParse(id).success)
    throw new Error(`a case's id must be lower-case words joined by hyphens; got ${JSON.stringify(id)}`);
  return join(content, "photos", id);
}
