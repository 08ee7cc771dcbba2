import { proposeTitle } from "../../casebook/form/proposeTitle";
import { showValue } from "../../document/showValue";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { normalWords } from "../cells/normalWords";
import { readOutcome } from "../cells/readOutcome";
import { type ImportField, labelOfField } from "../import/importField";
import type { RowFault } from "../import/importPlan";
import type { TableRow } from "../table/readTable";
import type { EntryReader } from "./entryReader";
import type { RowReader } from "./rowReader";

/**
 * A row as front matter and story, without an id where the table gives none. `faults` keep it out; `doubts` only keep it from
 * being a finished case: a cause that is not known, say.
 */
export type RowCase = Readonly<{
  fields: Readonly<Record<string, unknown>>;
  story: string;
  faults: readonly RowFault[];
  doubts: readonly RowFault[];
  remarks: readonly string[];
}>;

const openWords = ["open", "in hand", "in work", "waiting", "not done"];
const closedWords = ["closed", "done", "finished", "completed", "collected", "picked up"];

/** Reads one row of old jobs into a case, as far as its cells go. */
export function rowCase(
  row: TableRow,
  reader: RowReader,
  entries: EntryReader,
  { instruments }: Pick<Vocabulary, "instruments">,
): RowCase {
  const faults: RowFault[] = [];
  const doubts: RowFault[] = [];
  const remarks: string[] = [];
  const kept: string[] = [];
  const words = (field: ImportField) => reader.words(row, field) || undefined;
  const lines = (field: ImportField) => {
    const found = reader
      .words(row, field)
      .split("\n")
      .map((line) => line.trim());
    return found.filter((line) => line !== "");
  };
  const object = (list: RowFault[], field: ImportField, expected: string) =>
    list.push({ column: reader.column(field), received: showValue(words(field)), expected });
  const keep = (field: ImportField) => {
    if (words(field)) kept.push(`${labelOfField(field)}: ${reader.words(row, field)}`);
  };

  const said = reader.words(row, "instrument");
  const instrument = said === "" ? undefined : entries.instrument(said);
  if (instrument === undefined)
    object(faults, "instrument", said === "" ? "the instrument" : "an instrument that the vocabulary knows");

  const causeWords = reader.words(row, "cause");
  const cause = causeWords === "" ? undefined : entries.cause(causeWords);
  if (causeWords !== "" && cause === undefined) {
    const near = entries.nearestCause(causeWords);
    object(doubts, "cause", near ? `'${near}', or another known cause` : "a known cause, by its name or id");
    keep("cause");
  }
  const partWords = reader.words(row, "part");
  const part = partWords === "" ? undefined : entries.part(partWords, instrument ?? "");
  if (partWords !== "" && part === undefined) object(doubts, "part", "a part that the vocabulary knows");
  if (partWords !== "" && (part === undefined || cause === undefined)) keep("part");

  const outcomeWords = reader.words(row, "outcome");
  const outcome = outcomeWords === "" ? undefined : readOutcome(outcomeWords);
  if (outcomeWords !== "" && outcome === undefined) {
    object(doubts, "outcome", "fixed, improved, not-fixed or declined");
    keep("outcome");
  }
  const state = normalWords(reader.words(row, "status"));
  if (state !== "" && ![...openWords, ...closedWords].includes(state))
    object(faults, "status", "open or closed");

  const received = reader.day(row, "received", faults);
  const status = openWords.includes(state) ? "open" : "closed";
  const closed = reader.has("closed")
    ? reader.day(row, "closed", faults)
    : status === "closed"
      ? received
      : undefined;
  const amount = (field: Parameters<RowReader["amount"]>[1]) => reader.amount(row, field, faults);
  const pair = (
    minutesField: "quotedMinutes" | "swallowedMinutes",
    moneyField: "quotedPrice" | "swallowedMoney",
    name: string,
  ) => {
    const [minutes, money] = [amount(minutesField), amount(moneyField)];
    if (minutes !== undefined && money !== undefined) return { minutes, [name]: money };
    keep(minutesField);
    keep(moneyField);
    return undefined;
  };
  const complaint = words("complaint");
  const label = instrument === undefined ? "" : (instruments.get(instrument)?.label ?? instrument);
  const id = idOf(reader.words(row, "id"));
  if (id !== undefined && id !== reader.words(row, "id"))
    remarks.push(`'${reader.words(row, "id")}' is written ${id}`);
  const fields = {
    id,
    title: words("title") ?? proposeTitle(label, complaint ?? ""),
    status,
    instrument,
    maker: words("maker"),
    model: words("model"),
    received,
    closed,
    complaint,
    arrival: lines("arrival"),
    causes: cause === undefined ? [] : [{ cause, ...(part === undefined ? {} : { part }), role: "root" }],
    outcome,
    minutes: amount("minutes") ?? amount("hours"),
    quoted: pair("quotedMinutes", "quotedPrice", "price"),
    charge: amount("charge"),
    swallowed: pair("swallowedMinutes", "swallowedMoney", "money"),
    lessons: lines("lessons"),
  };
  const parts = reader.storyParts(row);
  const told = parts.map(({ heading, words: text }) => (parts.length > 1 ? `${heading}: ${text}` : text));
  if (kept.length > 0) remarks.push(`kept in the story: ${kept.join("; ")}`);
  return { fields, story: [...told, ...kept].join("\n\n"), faults, doubts, remarks };
}

/** An id made of a job's number: `2019/113 B` becomes `2019-113-b`; undefined where there is none. */
function idOf(words: string): string | undefined {
  return normalWords(words).replaceAll(" ", "-") || undefined;
}
