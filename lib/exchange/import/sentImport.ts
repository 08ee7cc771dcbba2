import { z } from "zod";
import { decodeText } from "../table/decodeText";
import { importChoicesSchema } from "./importChoices";
import { type ImportField, isImportField } from "./importField";
import { largestTableFile, longestTable, tooLong } from "./longestTable";

/** A table of old jobs as text, with the name of its file and how its bytes had to be read. */
const tableSourceSchema = z.object({
  name: z.string().max(300),
  text: z.string().max(longestTable),
  encoding: z.enum(["UTF-8", "UTF-16", "Latin-1"]),
});
export type TableSource = z.infer<typeof tableSourceSchema>;

/** What somebody who brings old jobs in asked for. */
export type SentImport = Readonly<{
  wish: "read" | "try" | "take";
  source: TableSource | undefined;
  /** Why what was chosen could not be read; empty where it could, or where nothing was chosen. */
  fault: string;
  /** By the place of a column from 0 what it is taken as; a column that is left out is in it too. */
  matched: ReadonlyMap<number, ImportField | undefined>;
  choices: z.infer<typeof importChoicesSchema>;
}>;

const wishSchema = z.enum(["read", "try", "take"]).catch("read");
const choicesSchema = z.object({
  dates: importChoicesSchema.shape.dates.catch(undefined),
  decimal: importChoicesSchema.shape.decimal.catch(undefined),
  incomplete: z.enum(["refuse", "open"]).catch("refuse"),
});
/** The first bytes of every zip, spreadsheet files among them. Source: PKWARE APPNOTE 6.3.10, section 4.3.7. */
const zipStart = [0x50, 0x4b];
const isZip =
  "It is a zip, or a spreadsheet file, and no text. Save a spreadsheet as CSV and choose that; a zip of a casebook goes in under Bring a copy back.";

const pastedSchema = z.string().catch("");

/**
 * Reads the entries of a submitted form. A file that was chosen goes before a table that was pasted, and either before the one
 * that the page held already.
 *
 * @param entries names and values; columns are named `column.0`
 * @param held the table that the page was made from, as the browser sent it back
 */
export async function readSentImport(
  entries: Iterable<readonly [string, unknown]>,
  held: unknown,
): Promise<SentImport> {
  const plain = new Map<string, unknown>();
  const matched = new Map<number, ImportField | undefined>();
  for (const [name, value] of entries) {
    const at = /^column\.(\d{1,3})$/.exec(name)?.[1];
    if (at === undefined) plain.set(name, value);
    else matched.set(Number(at), typeof value === "string" && isImportField(value) ? value : undefined);
  }
  const wish = wishSchema.parse(plain.get("wish"));
  const { source, fault } = await readSource(plain, wish === "read" ? undefined : held);
  const choices = choicesSchema.parse(Object.fromEntries(plain));
  return { wish, source, fault, matched: wish === "read" ? new Map() : matched, choices };
}

async function readSource(
  plain: ReadonlyMap<string, unknown>,
  held: unknown,
): Promise<Pick<SentImport, "source" | "fault">> {
  const file = plain.get("file");
  const pasted = pastedSchema.parse(plain.get("pasted"));
  if (held !== undefined) return { source: tableSourceSchema.safeParse(held).data, fault: "" };
  if (file instanceof Blob && file.size > 0) {
    const name = file instanceof File ? file.name.slice(0, 300) : "the file";
    if (file.size > largestTableFile) return { source: undefined, fault: tooLong };
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (zipStart.every((byte, at) => bytes[at] === byte)) return { source: undefined, fault: isZip };
    const decoded = decodeText(bytes);
    if (!decoded)
      return { source: undefined, fault: "It is no text. Save the table as CSV and choose that file." };
    if (decoded.text.length > longestTable) return { source: undefined, fault: tooLong };
    return { source: { name, ...decoded }, fault: "" };
  }
  if (pasted.length > longestTable) return { source: undefined, fault: tooLong };
  if (pasted.trim() === "")
    return { source: undefined, fault: "Nothing was chosen. Choose a CSV file, or paste the table." };
  return { source: { name: "what was pasted", text: pasted, encoding: "UTF-8" }, fault: "" };
}
