import { notPlain } from "./notPlain";
import { isPlainKey } from "./plainKey";
import { readFlow } from "./readFlow";

/** Lists and fields by indent lie no deeper than this in plain YAML. Chosen: content has four. */
const deepest = 8;

/** Controls, tabs, and what is a space or a line end in some places only. */
const oddSigns = /[\u0000-\u0009\u000b-\u001f\u007f-\u00a0\u2028\u2029\ufeff]/;
const keyAhead = /^([A-Za-z_][A-Za-z0-9_-]{0,60}):(?: +(?=[^ ])|$)/;

/** A line taken apart; `indent` counts its leading spaces, and those of the dash before it. */
type Line = { indent: number; text: string };
type Cursor = { readonly lines: Line[]; at: number };

/**
 * Reads YAML as nearly all case files have it: fields by indent, lists of dashes, small lists and fields in brackets, values
 * of one line that are bare or in simple quotes. Whatever is written otherwise (remarks, long texts by indent, tags, aliases,
 * escapes, empty lines, keys in quotes, double keys, faults of any kind) is left to the reader of all YAML.
 *
 * @returns the same fields that `readAnyYaml` gives, or undefined where the text is not plain, sound or not
 */
export function readPlainYaml(text: string): Record<string, unknown> | undefined {
  if (text === "" || oddSigns.test(text)) return undefined;
  const whole = text.endsWith("\n") ? text.slice(0, -1) : text;
  const lines: Line[] = [];
  for (const line of whole.split("\n")) {
    let indent = 0;
    while (line[indent] === " ") indent += 1;
    if (indent === line.length || line.endsWith(" ")) return undefined;
    lines.push({ indent, text: indent === 0 ? line : line.slice(indent) });
  }
  const cursor: Cursor = { lines, at: 0 };
  const fields = readFields(cursor, 0, 0);
  return fields === notPlain || cursor.at < lines.length ? undefined : fields;
}

function readFields(
  cursor: Cursor,
  indent: number,
  depth: number,
): Record<string, unknown> | typeof notPlain {
  const fields: Record<string, unknown> = {};
  for (let line = cursor.lines[cursor.at]; line?.indent === indent; line = cursor.lines[cursor.at]) {
    const ahead = keyAhead.exec(line.text);
    const key = ahead?.[1];
    if (ahead === null || key === undefined) return notPlain;
    if (!isPlainKey(key) || Object.hasOwn(fields, key)) return notPlain;
    const rest = line.text.slice(ahead[0].length);
    cursor.at += 1;
    const value = rest === "" ? readBelow(cursor, indent, depth) : readOnLine(cursor, rest, indent);
    if (value === notPlain) return notPlain;
    fields[key] = value;
  }
  return fields;
}

/** A value that stands on its key's line; what is indented deeper below it would belong to it. */
function readOnLine(cursor: Cursor, text: string, indent: number): unknown {
  const next = cursor.lines[cursor.at];
  return next !== undefined && next.indent > indent ? notPlain : readFlow(text);
}

/** What stands on the lines below a key: a list, fields, or nothing. */
function readBelow(cursor: Cursor, indent: number, depth: number): unknown {
  const next = cursor.lines[cursor.at];
  if (depth >= deepest) return notPlain;
  if (next === undefined) return null;
  // The dashes of a list may stand right below its key.
  if (next.text.startsWith("- ") && next.indent >= indent) return readList(cursor, next.indent, depth + 1);
  return next.indent > indent ? readFields(cursor, next.indent, depth + 1) : null;
}

function readList(cursor: Cursor, indent: number, depth: number): unknown[] | typeof notPlain {
  const list: unknown[] = [];
  for (let line = cursor.lines[cursor.at]; line?.indent === indent; line = cursor.lines[cursor.at]) {
    if (!line.text.startsWith("- ")) break;
    const text = line.text.slice(2);
    if (text.startsWith(" ") || text.startsWith("- ")) return notPlain;
    let value: unknown;
    if (keyAhead.test(text)) {
      // Fields that begin beside the dash go on below the first of them.
      cursor.lines[cursor.at] = { indent: indent + 2, text };
      value = readFields(cursor, indent + 2, depth + 1);
    } else {
      cursor.at += 1;
      value = readOnLine(cursor, text, indent);
    }
    if (value === notPlain) return notPlain;
    list.push(value);
  }
  return list;
}
