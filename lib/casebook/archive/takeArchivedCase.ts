import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readCase } from "../readCase";
import { saveNewCase } from "../saveNewCase";
import type { ArchiveTaking, TakenFile } from "./archiveTaking";
import { decodeText } from "./decodeText";
import type { Archive } from "./openArchive";
import { readIfThere } from "./readIfThere";

/** Takes one case of an archive in, after every check that a new case goes through; see `takeArchive`. */
export function takeArchivedCase(
  { path, id, read }: Archive["cases"][number],
  { folders, casebook, vocabulary, write, mark, onSaved }: ArchiveTaking,
): TakenFile {
  const leave = (
    state: "differs" | "refused",
    field: string,
    received: string,
    expected: string,
  ): TakenFile => ({ path, state, problems: [{ file: path, line: 0, field, received, expected }] });
  const refuse = (field: string, received: string, expected: string) =>
    leave("refused", field, received, expected);
  const differs = () => leave("differs", "id", `'${id}', which another case has`, "an id of its own");
  const bytes = read();
  const text = decodeText(bytes);
  if (text === undefined) return refuse("", "bytes that are not UTF-8", "the file saved as UTF-8 text");
  const reading = readCase(text, path, vocabulary);
  if (!reading.case) return { path, state: "refused", problems: reading.problems };
  if (reading.case.id !== id) return refuse("id", `'${reading.case.id}'`, `'${id}', as its file is named`);
  const known = casebook.cases.get(id);
  const standing = known
    ? readFileSync(join(folders.cases, known.file))
    : readIfThere(join(folders.cases, `${id}.md`));
  if (standing) return Buffer.compare(standing, bytes) === 0 ? { path, state: "there already" } : differs();
  if (!write) return { path, state: "new" };
  const { case: saved, problems } = saveNewCase(text, folders.cases, vocabulary, mark);
  if (!saved) return { path, state: "refused", problems };
  onSaved?.(saved);
  return { path, state: "new" };
}
