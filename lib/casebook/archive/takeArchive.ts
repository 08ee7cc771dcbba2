import type { ContentProblem } from "../../document/contentProblem";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { ContentFolders } from "../contentFolder";
import type { Casebook } from "../loadCasebook";
import type { Archive } from "./openArchive";
import { takeArchivedCase } from "./takeArchivedCase";
import { takeArchivedLesson } from "./takeArchivedLesson";
import { takeArchivedPhoto } from "./takeArchivedPhoto";

/** What becomes of one file of an archive. */
export type TakenFile =
  | Readonly<{ path: string; state: "new" | "there already" }>
  | Readonly<{ path: string; state: "refused"; problems: readonly ContentProblem[] }>;

/** Where an archive is taken in. Without `write` everything is looked at and nothing is written. */
export type ArchiveTaking = Readonly<{
  folders: ContentFolders;
  casebook: Pick<Casebook, "cases">;
  vocabulary: Vocabulary;
  write: boolean;
  mark: string;
}>;

/**
 * Takes the files of an archive into a casebook, each whole or not at all. What is there already to the byte is well; an id or
 * name that something else has is refused and nothing is overwritten. Pictures go first and
 * lessons last, so that nothing is there before what it speaks of.
 *
 * @returns what became of each file, in that order
 * @throws ZipFault where a file's packed bytes are not sound; nothing has been written then: all are unpacked once before
 */
export async function takeArchive(archive: Archive, taking: ArchiveTaking): Promise<TakenFile[]> {
  for (const { read } of [...archive.photos, ...archive.cases, ...archive.lessons]) read();
  const taken: TakenFile[] = [];
  for (const photo of archive.photos) taken.push(await takeArchivedPhoto(photo, taking));
  for (const kase of archive.cases) taken.push(takeArchivedCase(kase, taking));
  for (const lesson of archive.lessons) taken.push(takeArchivedLesson(lesson, taking));
  return taken;
}
