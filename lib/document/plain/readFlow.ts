import { notPlain } from "./notPlain";
import { isPlainKey, quotedKey } from "./plainKey";
import { readPlainScalar } from "./readPlainScalar";

/** Lists and fields in brackets lie no deeper than this in plain YAML. Chosen: content has three. */
const deepest = 8;

type Cursor = { readonly text: string; at: number };

const keyAhead = /([A-Za-z_][A-Za-z0-9_-]{0,60}): +/y;
const quotedAhead = /"([^"\\]*)": +/y;
/** No escapes but those of its own two signs. */
const doubleQuoted = /"((?:[^"\\]|\\["\\])*)"/y;
const singleQuoted = /'((?:[^']|'')*)'/y;
const bare = /[^[\]{},"'][^[\]{},]*/y;

/**
 * Reads a value that stands on one line: `{ a: 1, b: [c, "d"] }`, in quotes, or bare.
 *
 * @param text the whole value, no space at either end
 * @returns the value, or `notPlain` where a sign in it might mean something
 */
export function readFlow(text: string): unknown {
  const first = text[0];
  if (first !== "{" && first !== "[" && first !== '"' && first !== "'") return readPlainScalar(text);
  const cursor: Cursor = { text, at: 0 };
  const value = readValue(cursor, 0);
  return cursor.at === text.length ? value : notPlain;
}

function readValue(cursor: Cursor, depth: number): unknown {
  switch (cursor.text[cursor.at]) {
    case "{":
      return depth < deepest ? readFields(cursor, depth) : notPlain;
    case "[":
      return depth < deepest ? readList(cursor, depth) : notPlain;
    case '"':
      return match(cursor, doubleQuoted)?.[1]?.replace(/\\(.)/g, "$1") ?? notPlain;
    case "'":
      return match(cursor, singleQuoted)?.[1]?.replaceAll("''", "'") ?? notPlain;
    default: {
      const text = match(cursor, bare)?.[0].replace(/ +$/, "");
      // A colon before a comma or a bracket, or with no space after it, has rules of its own in brackets.
      return text === undefined || text.includes(":") ? notPlain : readPlainScalar(text);
    }
  }
}

function readFields(cursor: Cursor, depth: number): unknown {
  const fields: Record<string, unknown> = {};
  if (isEmptyPair(cursor, "}")) return fields;
  do {
    skipSpaces(cursor);
    const key = readKey(cursor);
    if (key === undefined || Object.hasOwn(fields, key)) return notPlain;
    const value = readValue(cursor, depth + 1);
    if (value === notPlain) return notPlain;
    fields[key] = value;
  } while (passComma(cursor));
  return close(cursor, "}") ? fields : notPlain;
}

function readKey(cursor: Cursor): string | undefined {
  if (cursor.text[cursor.at] === '"') return quotedKey(match(cursor, quotedAhead)?.[1]);
  const key = match(cursor, keyAhead)?.[1];
  return key !== undefined && isPlainKey(key) ? key : undefined;
}

function readList(cursor: Cursor, depth: number): unknown {
  const list: unknown[] = [];
  if (isEmptyPair(cursor, "]")) return list;
  do {
    skipSpaces(cursor);
    const value = readValue(cursor, depth + 1);
    if (value === notPlain) return notPlain;
    list.push(value);
  } while (passComma(cursor));
  return close(cursor, "]") ? list : notPlain;
}

/** Passes the bracket that opens, and the one that closes where nothing stands between them. */
function isEmptyPair(cursor: Cursor, closing: string): boolean {
  cursor.at += 1;
  skipSpaces(cursor);
  return close(cursor, closing);
}

function passComma(cursor: Cursor): boolean {
  skipSpaces(cursor);
  return close(cursor, ",");
}

function close(cursor: Cursor, sign: string): boolean {
  if (cursor.text[cursor.at] !== sign) return false;
  cursor.at += 1;
  return true;
}

function skipSpaces(cursor: Cursor): void {
  while (cursor.text[cursor.at] === " ") cursor.at += 1;
}

function match(cursor: Cursor, pattern: RegExp): RegExpExecArray | undefined {
  pattern.lastIndex = cursor.at;
  const found = pattern.exec(cursor.text);
  if (found === null) return undefined;
  cursor.at += found[0].length;
  return found;
}
