import { Document, isMap, isSeq, type YAMLMap } from "yaml";

/** How the fields of a kind of file are laid out. */
export type FrontMatterLayout = Readonly<{
  /** Names in the order in which they stand; others come after them in their own order. */
  order: readonly string[];
  /** Lists whose entries stand on one line each. */
  lineEach: readonly string[];
  /** Groups that stand on one line as a whole. */
  oneLine: readonly string[];
  /** Whether an entry is too long for that: it stands open, its own groups on a line each. */
  isLong?: (entry: YAMLMap) => boolean;
}>;

/**
 * Writes a Markdown file: fields between two `---` lines, then the text.
 *
 * @param fields plain data; fields that are undefined are left out
 */
export function writeFrontMatter(
  fields: Readonly<Record<string, unknown>>,
  body: string,
  { order, lineEach, oneLine, isLong = () => false }: FrontMatterLayout,
): string {
  const names = [...order, ...Object.keys(fields).filter((name) => !order.includes(name))];
  // A map and not an object: objects put fields that are named by a number first.
  const ordered = new Map(
    names.filter((name) => fields[name] !== undefined).map((name) => [name, fields[name]]),
  );
  const document = new Document(ordered, { version: "1.2", schema: "core", aliasDuplicateObjects: false });
  for (const name of lineEach) {
    const list = document.get(name);
    if (!isSeq(list)) continue;
    for (const entry of list.items) {
      if (!isMap(entry)) continue;
      if (!isLong(entry)) entry.flow = true;
      else for (const { value } of entry.items) if (isMap(value)) value.flow = true;
    }
  }
  for (const name of oneLine) {
    const group = document.get(name);
    if (isMap(group)) group.flow = true;
  }
  return `---\n${document.toString({ lineWidth: 0, flowCollectionPadding: true })}---\n\n${body.trim()}\n`;
}
