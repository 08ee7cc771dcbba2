import { join } from "node:path";
import { realDisk } from "../keeping/disk";
import { codeOf, diskFault } from "../keeping/diskFault";
import { placeNewFile } from "../keeping/placeNewFile";
import { readLesson } from "../lessons/readLesson";
import type { ArchiveTaking, TakenFile } from "./archiveTaking";
import { decodeText } from "./decodeText";
import type { Archive } from "./openArchive";
import { readIfThere } from "./readIfThere";

/** Takes one lesson of an archive in, where it can be read; see `takeArchive`. Its cases may come later, or by another way. */
export function takeArchivedLesson(
  { path, id, read }: Archive["lessons"][number],
  { folders, write, mark }: ArchiveTaking,
): TakenFile {
  const leave = (
    state: "differs" | "refused",
    field: string,
    received: string,
    expected: string,
  ): TakenFile => ({ path, state, problems: [{ file: path, line: 0, field, received, expected }] });
  const refuse = (field: string, received: string, expected: string) =>
    leave("refused", field, received, expected);
  const differs = () => leave("differs", "id", `'${id}', which another lesson has`, "an id of its own");
  const bytes = read();
  const text = decodeText(bytes);
  if (text === undefined) return refuse("", "bytes that are not UTF-8", "the file saved as UTF-8 text");
  const file = `${id}.md`;
  const { lesson, problems } = readLesson(text, file);
  if (!lesson)
    return { path, state: "refused", problems: problems.map((problem) => ({ ...problem, file: path })) };
  const standing = readIfThere(join(folders.lessons, file));
  if (standing) return Buffer.compare(standing, bytes) === 0 ? { path, state: "there already" } : differs();
  if (!write) return { path, state: "new" };
  try {
    realDisk.makeFolder(folders.lessons);
    placeNewFile(join(folders.lessons, file), bytes, mark);
    return { path, state: "new" };
  } catch (error) {
    if (codeOf(error) === "EEXIST") return differs();
    const fault = diskFault(error, folders.lessons);
    if (!fault) throw error;
    return refuse("", fault.received, fault.expected);
  }
}
