import { notPlain } from "./notPlain";
import { isPlainKey, quotedKey } from "./plainKey";
import { readFlow } from "./readFlow";

/** Lists and fields by indent lie no deeper than this in plain YAML. Chosen: content has four. */
const deepest = 8;

/** Controls, tabs, and what is a space or a line end in some places only. */
const oddSigns = /[\u0000-\u0009\u000b-\u001f\u007f-\u00a0\u2028\u2029\ufeff]/;
const remark = /^ *#/;
const keyAhead = /^(?:([\w+¼½¾⅓⅔][\w/'-]{0,60})|"([^"\\]{0,60})"):(?: +(?=[^ ])|$)/;

/** A line taken apart; `indent` counts its leading spaces, and those of the dash before it. */
type Line = { indent: number; text: string };
type Cursor = { readonly lines: Line[]; at: number };

/**
 * Reads YAML as nearly all case files and the vocabulary have it: fields by indent, lists of dashes, small lists and fields in
 * brackets, values of one line that are bare or in simple quotes; empty lines and remarks on lines of their own between them.
 * Whatever is written otherwise (remarks beside a value, long texts by indent, tags, aliases, escapes, keys in quotes, double
 * keys, faults of any kind) is left to the reader of all YAML.
 *
 * @returns the same fields, or list, that `readAnyYaml` gives, or undefined where the text is not plain, sound or not
 */
export function readPlainYaml(text: string): Record<string, unknown> | unknown[] | undefined {
  if (text === "" || oddSigns.test(text)) return undefined;
  const whole = text.endsWith("\n") ? text.slice(0, -1) : text;
  const lines: Line[] = [];
  for (const line of whole.split("\n")) {
    // No value of several lines is read here, so that neither of these can be a part of one.
    if (line === "" || remark.test(line)) continue;
    let indent = 0;
    while (line[indent] === " ") indent += 1;
    if (indent === line.length || line.endsWith(" ")) return undefined;
    lines.push({ indent, text: indent === 0 ? line : line.slice(indent) });
  }
  const cursor: Cursor = { lines, at: 0 };
  if (lines.length === 0) return undefined;
  const isList = lines[0]?.indent === 0 && lines[0].text.startsWith("- ");
  const read = isList ? readList(cursor, 0, 0) : readFields(cursor, 0, 0);
  return read === notPlain || cursor.at < lines.length ? undefined : read;
}

function readFields(
  cursor: Cursor,
  indent: number,
  depth: number,
): Record<string, unknown> | typeof notPlain {
  const fields: Record<string, unknown> = {};
  for (let line = cursor.lines[cursor.at]; line?.indent === indent; line = cursor.lines[cursor.at]) {
    const ahead = keyAhead.exec(line.text);
    if (ahead === null) return notPlain;
    const [, bare, quoted] = ahead;
    const key = bare !== undefined && isPlainKey(bare) ? bare : quotedKey(quoted);
    if (key === undefined || Object.hasOwn(fields, key)) return notPlain;
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
