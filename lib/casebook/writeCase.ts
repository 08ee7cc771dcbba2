import { Document, isMap, isSeq, type YAMLMap } from "yaml";
import { caseFieldsSchema } from "./caseFile";

/** Lists whose entries stand on one line each, so that a path reads as a path. */
const oneLineEntries = ["plan", "path", "causes", "harms", "like"] as const;
/** Lists that stand on one line as a whole, and small groups. */
const oneLine = ["clock", "quoted", "swallowed"] as const;

/**
 * Writes a case as a Markdown file: fields in the schema's order, unknown ones after them in their own order, then the
 * story. Writing what was read from its output gives the same text again.
 *
 * @param fields front matter as plain data; fields that are undefined are left out
 */
export function writeCase(fields: Readonly<Record<string, unknown>>, story: string): string {
  const known = Object.keys(caseFieldsSchema.shape);
  const names = [...known, ...Object.keys(fields).filter((name) => !known.includes(name))];
  // A map and not an object: objects put fields that are named by a number first.
  const ordered = new Map(
    names.filter((name) => fields[name] !== undefined).map((name) => [name, fields[name]]),
  );
  const document = new Document(ordered, { version: "1.2", schema: "core", aliasDuplicateObjects: false });
  for (const name of oneLineEntries) {
    const list = document.get(name);
    if (isSeq(list)) for (const entry of list.items) if (isMap(entry)) layOnOneLine(entry);
  }
  for (const name of oneLine) {
    const group = document.get(name);
    if (isMap(group)) group.flow = true;
  }
  return `---\n${document.toString({ lineWidth: 0, flowCollectionPadding: true })}---\n\n${story.trim()}\n`;
}

/** Plug and bore readings are long: their step stands open, the readings on a line each. */
function layOnOneLine(entry: YAMLMap): void {
  const long = ["plugs", "bore"].some((name) => entry.has(name));
  if (!long) {
    entry.flow = true;
    return;
  }
  for (const { value } of entry.items) if (isMap(value)) value.flow = true;
}
