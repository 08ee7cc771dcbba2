import { TableFault } from "./tableFault";

/** A record's fields and the line on which it starts; a `quoted` field is never unknown. */
export type CsvRecord = Readonly<{
  line: number;
  fields: readonly Readonly<{ text: string; quoted: boolean }>[];
}>;

/** A field up to the next separator, line end or the end: quoted, with doubled quotes inside, or plain. */
function fieldPattern(separator: string): RegExp {
  const plain = `[^${separator}\\r\\n]*`;
  return new RegExp(`(?:[ \\t]*"((?:[^"]|"")*)"[ \\t]*|(${plain}))(${separator}|\\r\\n|\\n|\\r|$)`, "y");
}

/**
 * Splits a text into records by RFC 4180; empty lines are passed over.
 * The separator is the comma, or the semicolon or tab where the first line has no comma.
 *
 * @param file as messages name it
 * @throws TableFault where a quote is not closed, or something stands behind a closing quote
 * Source: RFC 4180 (Shafranovich 2005), section 2.
 */
export function splitCsv(text: string, file: string): CsvRecord[] {
  const body = text.replace(/^\uFEFF/, "");
  const first = /^[^\r\n]*/.exec(body)?.[0] ?? "";
  const separator = [",", ";", "\t"].find((one) => first.includes(one)) ?? ",";
  const pattern = fieldPattern(separator === "\t" ? "\\t" : separator);
  const records: CsvRecord[] = [];
  let fields: { text: string; quoted: boolean }[] = [];
  let line = 1;
  let start = 1;
  while (pattern.lastIndex < body.length || fields.length > 0) {
    const match = pattern.exec(body);
    const quoted = match?.[1];
    if (!match || (quoted === undefined && match[2]?.trimStart().startsWith('"'))) {
      const mend = 'a closing quote before the separator, and "" for a quote inside';
      throw new TableFault(file, line, "record", "a quote that is not closed in its place", mend);
    }
    fields.push(
      quoted === undefined
        ? { text: (match[2] ?? "").trim(), quoted: false }
        : { text: quoted.replaceAll('""', '"'), quoted: true },
    );
    line += match[0].match(/\r\n|\n|\r/g)?.length ?? 0;
    if (match[3] === separator) continue;
    const isEmpty = fields.length === 1 && fields[0]?.text === "" && !fields[0].quoted;
    if (!isEmpty) records.push({ line: start, fields });
    fields = [];
    start = line;
  }
  return records;
}
