import type { ColumnBuilder } from "./columnBuilder";
import { nominalBuilder } from "./nominalBuilder";
import { numericBuilder } from "./numericBuilder";
import { readNumber } from "./readNumber";
import { splitArffLine } from "./splitArffLine";

/** A declared attribute; text is read only if it is asked for as the class. */
export type ArffAttribute = Readonly<{ name: string; builder: ColumnBuilder; isText: boolean }>;

/** Whole numbers, points and exponents. */
const aNumber = "a number, or ? where it is unknown";
const aDate = "a date such as 2024-03-09 or 2024-03-09T12:30:00, or ? where it is unknown";

/**
 * Reads what follows `@attribute`: a name, quoted where it has blanks, and a type: {values}, numeric, real, integer,
 * string or date. Dates become milliseconds since 1970.
 *
 * @returns what would have been right, in words, where it cannot be read
 * Source: ARFF as described in Witten, Frank & Hall, Data Mining, section 2.4.
 */
export function readArffAttribute(declaration: string): ArffAttribute | string {
  const match = /^(?:'((?:[^'\\]|\\.)*)'|"((?:[^"\\]|\\.)*)"|([^\s{]+))\s*(.*)$/s.exec(declaration.trim());
  const name = (match?.[1] ?? match?.[2] ?? match?.[3] ?? "").replace(/\\(.)/g, "$1");
  const type = match?.[4]?.trim() ?? "";
  if (name === "" || type === "") return "@attribute NAME TYPE";
  if (type.startsWith("{")) return readNominal(name, type);
  switch (type.split(/\s/)[0]?.toLowerCase()) {
    case "numeric":
    case "real":
    case "integer":
      return { name, builder: numericBuilder(name, readNumber, aNumber), isText: false };
    case "string":
      return { name, builder: nominalBuilder(name), isText: true };
    case "date":
      return { name, builder: numericBuilder(name, readDate, aDate), isText: false };
    default:
      return "a type: {values}, numeric, real, integer, string or date";
  }
}

function readNominal(name: string, type: string): ArffAttribute | string {
  const inside = type.endsWith("}") ? type.slice(1, -1) : undefined;
  const cells = inside === undefined ? undefined : splitArffLine(inside);
  if (!cells) return "values between { and } on one line, every quote closed";
  const values = cells.map(({ text }) => text);
  if (cells.some(({ text, quoted }) => text === "" && !quoted)) return "a value between every two commas";
  const twice = values.find((value, at) => values.indexOf(value) !== at);
  if (twice !== undefined) return `every value once; "${twice}" stands there twice`;
  return { name, builder: nominalBuilder(name, values), isText: false };
}

function readDate(cell: string): number | undefined {
  const time = /^\d{4}-\d{2}/.test(cell) ? Date.parse(cell) : Number.NaN;
  return Number.isNaN(time) ? undefined : time;
}
