import { showValue } from "../../document/showValue";
import { amountReadings, type DecimalMark, decimalMarks } from "../cells/amountReadings";
import { type DayOrder, dayOrders, dayReadings } from "../cells/dayReadings";
import { minuteReadings } from "../cells/minuteReadings";
import { type Readings, readSettled, type SettledWay, settleWay } from "../cells/settleWay";
import type { ImportChoices } from "../import/importChoices";
import { type ImportField, labelOfField, type Matching } from "../import/importField";
import type { RowFault } from "../import/importPlan";
import type { ReadTable, TableRow } from "../table/readTable";

const dayFields = ["received", "closed"] as const;
const minuteFields = ["minutes", "hours", "quotedMinutes", "swallowedMinutes"] as const;
const moneyFields = ["quotedPrice", "charge", "swallowedMoney"] as const;
export type DayField = (typeof dayFields)[number];
export type NumberField = (typeof minuteFields)[number] | (typeof moneyFields)[number];

/** Reads the cells of one table's rows by their field; what cannot be read goes to `faults` as it is met. */
export type RowReader = Readonly<{
  dates: SettledWay<DayOrder>;
  decimal: SettledWay<DecimalMark>;
  has: (field: ImportField) => boolean;
  words: (row: TableRow, field: ImportField) => string;
  day: (row: TableRow, field: DayField, faults: RowFault[]) => string | undefined;
  amount: (row: TableRow, field: NumberField, faults: RowFault[]) => number | undefined;
  /** The heading of the column that a field is taken from. */
  column: (field: ImportField | undefined) => string;
  /** Headings and words of all columns that go into the story. */
  storyParts: (row: TableRow) => readonly Readonly<{ heading: string; words: string }>[];
}>;

/** Makes a reader of a table's rows; how its dates and numbers are written is settled by looking at all of them first. */
export function rowReader(
  { headings, rows }: ReadTable,
  matching: Matching,
  choices: ImportChoices,
  today: string,
): RowReader {
  const places = new Map(matching.flatMap((field, at) => (field ? [[field, at] as const] : [])));
  const storyPlaces = matching.flatMap((field, at) => (field === "story" ? [at] : []));
  const words = (row: TableRow, field: ImportField) => {
    const at = places.get(field);
    return at === undefined ? "" : (row.cells[at] ?? "");
  };
  const numberReadings = (field: NumberField, text: string) =>
    isMoney(field) ? amountReadings(text) : minuteReadings(text, field === "hours" ? "hours" : "minutes");
  const allOf = <Field extends ImportField, Way, Value>(
    fields: readonly Field[],
    read: (field: Field, text: string) => Readings<Way, Value>,
  ) =>
    rows.flatMap((row) =>
      fields.flatMap((field) => {
        const text = words(row, field);
        return text === "" ? [] : [{ line: row.line, text, readings: read(field, text) }];
      }),
    );
  const column = (field: ImportField | undefined) => {
    const at = field && places.get(field);
    return at === undefined ? "" : (headings[at] ?? "");
  };
  const dates = settleWay(
    allOf(dayFields, (_, text) => dayReadings(text, today)),
    dayOrders,
    choices.dates,
  );
  const decimal = settleWay(
    allOf([...minuteFields, ...moneyFields], numberReadings),
    decimalMarks,
    choices.decimal,
  );
  return {
    dates,
    decimal,
    has: (field) => places.has(field),
    words,
    column,
    day: (row, field, faults) => {
      const text = words(row, field);
      if (text === "") return undefined;
      const readings = dayReadings(text, today);
      const day = readSettled(readings, dates);
      if (day !== undefined && day <= today) return day;
      const expected =
        day === undefined
          ? wayOut(readings, "the year first, or say the order of dates")
          : "a day that is not ahead of today";
      faults.push({
        column: column(field),
        received: showValue(text),
        expected: expected ?? "a day, such as 2019-03-09",
      });
      return undefined;
    },
    amount: (row, field, faults) => {
      const text = words(row, field);
      if (text === "") return undefined;
      const readings = numberReadings(field, text);
      const amount = readSettled(readings, decimal);
      if (amount !== undefined) return amount;
      const plain = isMoney(field) ? "an amount, such as 48.50" : "a time, such as 45 or 1:20";
      const expected = wayOut(readings, "no mark for thousands, or say the decimal mark") ?? plain;
      faults.push({ column: column(field), received: showValue(text), expected });
      return undefined;
    },
    storyParts: (row) =>
      storyPlaces.flatMap((at) => {
        const text = row.cells[at] ?? "";
        return text === "" ? [] : [{ heading: headings[at] ?? labelOfField("story"), words: text }];
      }),
  };
}

const isMoney = (field: NumberField) => moneyFields.some((money) => money === field);

/** What to do about a cell that can be read in more ways than one; undefined where it can be read in none. */
function wayOut<Way, Value>(readings: Readings<Way, Value>, what: string): string | undefined {
  const values = [...new Set([...readings.values()].map(String))];
  if (values.length === 0) return undefined;
  return values.length === 1
    ? "it in the way in which the others are written"
    : `${what}: this can be ${values.join(" or ")}`;
}
