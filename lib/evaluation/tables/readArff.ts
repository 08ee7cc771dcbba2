import { showValue } from "../../document/showValue";
import { type ArffAttribute, readArffAttribute } from "./arffAttribute";
import { splitArffLine } from "./splitArffLine";
import { splitLines } from "./splitLines";
import type { Table } from "./table";
import { TableFault } from "./tableFault";

/**
 * Reads an ARFF file: nominal, numeric and date attributes; ? is unknown; string attributes are passed over with a note.
 *
 * @param file as messages name it
 * @param wanted name of an attribute to keep even if it is text: the class that was asked for
 * @throws TableFault at the first line that cannot be read
 * Source: ARFF as described in Witten, Frank & Hall, Data Mining, section 2.4.
 */
export function readArff(text: string, file: string, wanted?: string): Table {
  const lines = splitLines(text);
  const header = readHeader(lines, file);
  let rowCount = 0;
  for (let at = header.dataFrom; at < lines.length; at++) {
    const line = lines[at]?.trim() ?? "";
    if (line === "" || line.startsWith("%")) continue;
    addRow(line, at + 1, file, header.attributes);
    rowCount += 1;
  }
  const texts = header.attributes.filter(({ isText, name }) => isText && name !== wanted);
  return {
    file,
    columns: header.attributes.filter((one) => !texts.includes(one)).map(({ builder }) => builder.build()),
    rowCount,
    notes: texts.map(({ name }) => `${file}: string attribute "${name}" is not used`),
  };
}

function readHeader(
  lines: readonly string[],
  file: string,
): { attributes: ArffAttribute[]; dataFrom: number } {
  const attributes: ArffAttribute[] = [];
  const names = new Set<string>();
  for (const [at, raw] of lines.entries()) {
    const line = raw.trim();
    if (line === "" || line.startsWith("%") || /^@relation\b/i.test(line)) continue;
    if (/^@data\b/i.test(line)) {
      if (attributes.length > 0) return { attributes, dataFrom: at + 1 };
      throw new TableFault(file, at + 1, "@data", "no attribute before it", "@attribute lines first");
    }
    const declared = /^@attribute\s+(.*)$/is.exec(line)?.[1];
    if (declared === undefined) {
      throw new TableFault(
        file,
        at + 1,
        "header",
        showValue(line),
        "@relation, @attribute, @data or a % comment",
      );
    }
    const attribute = readArffAttribute(declared);
    if (typeof attribute === "string")
      throw new TableFault(file, at + 1, "@attribute", showValue(line), attribute);
    if (names.has(attribute.name)) {
      throw new TableFault(file, at + 1, "@attribute", `"${attribute.name}" again`, "every name once");
    }
    names.add(attribute.name);
    attributes.push(attribute);
  }
  throw new TableFault(file, 0, "", "no @data line", "@attribute lines, @data and then the rows");
}

function addRow(line: string, lineNumber: number, file: string, attributes: readonly ArffAttribute[]): void {
  if (line.startsWith("{")) {
    throw new TableFault(file, lineNumber, "row", "a sparse row", "all values of the row, comma between");
  }
  const cells = splitArffLine(line);
  if (!cells) throw new TableFault(file, lineNumber, "row", showValue(line), "every quote closed");
  if (cells.length !== attributes.length) {
    const counted = `${cells.length} values`;
    throw new TableFault(file, lineNumber, "row", counted, `${attributes.length}, one an attribute`);
  }
  for (const [at, { name, builder }] of attributes.entries()) {
    const cell = cells[at];
    const known = cell === undefined || (cell.text === "?" && !cell.quoted) ? undefined : cell.text;
    const expected = builder.add(known);
    if (expected !== undefined) throw new TableFault(file, lineNumber, name, showValue(known), expected);
  }
}
