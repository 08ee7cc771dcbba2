import { type ImportField, importFields, isImportField } from "@/lib/exchange/import/importField";
import { fail } from "../fail";

/**
 * Reads what somebody said about columns: `HEADING=FIELD`, by the heading or the column's number from 1, several at once with
 * commas between; `HEADING=` leaves a column out.
 */
export function readColumns(
  said: readonly string[],
  headings: readonly string[],
): ReadonlyMap<number, ImportField | undefined> {
  const matched = new Map<number, ImportField | undefined>();
  for (const pair of said.flatMap((one) => splitPairs(one, headings))) {
    const at = pair.lastIndexOf("=");
    const [heading, field] = [pair.slice(0, at).trim(), pair.slice(at + 1).trim()];
    const place = headings.includes(heading) ? headings.indexOf(heading) : Number(heading) - 1;
    if (at < 0 || headings[place] === undefined)
      fail(
        2,
        `--columns: found '${pair}'; write HEADING=FIELD with one of the headings: ${headings.join(", ")}`,
      );
    if (field !== "" && !isImportField(field))
      fail(
        2,
        `--columns: found the field '${field}'; write one of: ${importFields.map(({ id }) => id).join(", ")}`,
      );
    matched.set(place, field === "" ? undefined : field);
  }
  return matched;
}

/** A comma parts two pairs, unless it stands in a heading. */
function splitPairs(text: string, headings: readonly string[]): string[] {
  return headings.some((heading) => heading.includes(",") && text.startsWith(`${heading}=`))
    ? [text]
    : text.split(",").filter((pair) => pair.trim() !== "");
}
