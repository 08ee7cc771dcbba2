import { writeFrontMatter } from "../document/writeFrontMatter";
import { caseFieldsSchema } from "./caseFile";

/**
 * Writes a case as a Markdown file: fields in the schema's order, unknown ones after them in their own order, then the
 * story. A path reads as a path: a step a line, but for plug and bore readings, which are long. Writing what was read from
 * its output gives the same text again.
 *
 * @param fields front matter as plain data; fields that are undefined are left out
 */
export function writeCase(fields: Readonly<Record<string, unknown>>, story: string): string {
  return writeFrontMatter(fields, story, {
    order: Object.keys(caseFieldsSchema.shape),
    lineEach: ["photos", "plan", "path", "causes", "harms", "like"],
    oneLine: ["clock", "quoted", "swallowed"],
    isLong: (entry) => ["plugs", "bore"].some((name) => entry.has(name)),
  });
}
