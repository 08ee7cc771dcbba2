/** Whether a value is a group of fields. */
export const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
/** A group of fields as it is; anything else as an empty one. */
export const groupOf = (value: unknown): Readonly<Record<string, unknown>> => (isGroup(value) ? value : {});
/** A list as it is; anything else as an empty one. */
export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** A text for a field of several lines; a lone carriage return would come back from the browser as another line end. */
export function textOf(value: unknown): string {
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  return typeof value === "string" && !value.includes("\r") ? value : "";
}
/** A text for a field of one line: one with a line end in it would be cut by the browser, so it is not shown. */
export const lineOf = (value: unknown) => (textOf(value).includes("\n") ? "" : textOf(value));
/** A list of plain lines as a text, a line an entry; any other list is not shown. */
export function linesOf(value: unknown): string {
  const lines = listOf(value);
  return lines.every((line) => typeof line === "string" && line.trim() !== "" && lineOf(line) === line)
    ? lines.join("\n")
    : "";
}

/** The words in a field; undefined where it is blank. */
export const wordsIn = (text: string) => text.trim() || undefined;
/** The number in a field, or the text where it is none; undefined where the field is blank. */
export function numberIn(text: string): number | string | undefined {
  const plain = text.trim();
  if (plain === "") return undefined;
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : plain;
}
/** The lines in a field; undefined where all are blank. */
export function linesIn(text: string): string[] | undefined {
  const lines = text.split("\n").map((line) => line.trim());
  const filled = lines.filter((line) => line !== "");
  return filled.length > 0 ? filled : undefined;
}
