/** A cell; `quoted` tells '?' the word from ? the unknown. */
export type ArffCell = Readonly<{ text: string; quoted: boolean }>;

const escapes: Readonly<Record<string, string>> = { n: "\n", t: "\t", r: "\r" };

/**
 * Splits a line of ARFF at its commas, or at white space where it has none, outside quotes.
 * Quotes are ' or "; in them a backslash takes the next character as it is, but for \n, \t and \r.
 *
 * @returns undefined where a quote is not closed, or something stands right behind a closing quote
 * @example splitArffLine("a, 'b c', ?") // a; b c (quoted); ?
 */
export function splitArffLine(line: string): ArffCell[] | undefined {
  const cells: ArffCell[] = [];
  const byComma = hasComma(line);
  let text = "";
  let quoted = false;
  let closed = false;
  const end = () => {
    cells.push({ text: quoted ? text : text.trim(), quoted });
    text = "";
    quoted = false;
    closed = false;
  };
  for (let at = 0; at < line.length; at++) {
    const char = line[at] ?? "";
    const blank = char === " " || char === "\t";
    if (byComma ? char === "," : blank && (text !== "" || quoted)) end();
    else if (blank && (quoted || text === "")) continue;
    else if ((char === "'" || char === '"') && text === "" && !quoted) {
      const inside = readQuoted(line, at);
      if (inside === undefined) return undefined;
      text = inside.text;
      at = inside.last;
      quoted = true;
      closed = true;
    } else if (closed) return undefined;
    else text += char;
  }
  if (byComma || text !== "" || quoted) end();
  return cells;
}

/** What stands between the quote at `from` and its fellow at `last`. */
function readQuoted(line: string, from: number): { text: string; last: number } | undefined {
  let text = "";
  for (let at = from + 1; at < line.length; at++) {
    const char = line[at];
    if (char === line[from]) return { text, last: at };
    if (char === "\\") {
      at += 1;
      const escaped = line[at] ?? "";
      text += escapes[escaped] ?? escaped;
    } else text += char;
  }
  return undefined;
}

/** Whether a comma stands outside quotes. */
function hasComma(line: string): boolean {
  if (!line.includes(",")) return false;
  for (let at = 0; at < line.length; at++) {
    const char = line[at];
    if (char === ",") return true;
    if (char !== "'" && char !== '"') continue;
    at = readQuoted(line, at)?.last ?? line.length;
  }
  return false;
}
