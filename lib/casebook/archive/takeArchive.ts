import type { ArchiveTaking, TakenFile } from "./archiveTaking";
import type { Archive } from "./openArchive";
import { takeArchivedCase } from "./takeArchivedCase";
import { takeArchivedLesson } from "./takeArchivedLesson";
import { takeArchivedPhoto } from "./takeArchivedPhoto";

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
  for (const photo of archive.photos) taken.push(takeArchivedPhoto(photo, taking));
  for (const kase of archive.cases) taken.push(takeArchivedCase(kase, taking));
  for (const lesson of archive.lessons) taken.push(takeArchivedLesson(lesson, taking));
  return taken;
}
