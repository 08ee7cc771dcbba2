import { setImmediate } from "node:timers/promises";
import type { ArchiveTaking, TakenFile } from "./archiveTaking";
import type { Archive } from "./openArchive";
import { takeArchivedCase } from "./takeArchivedCase";
import { takeArchivedLesson } from "./takeArchivedLesson";
import { takeArchivedPhoto } from "./takeArchivedPhoto";

/**
 * Takes the files of an archive into a casebook, each whole or not at all. What is there already to the byte is well; an id or
 * name that something else has is left alone, and nothing is overwritten. Photos go first and lessons last, so that nothing is
 * there before what it speaks of. Between two files others have their turn.
 *
 * @returns what became of each file, in that order
 * @throws ZipFault where a file's packed bytes are not sound; nothing has been written then: all are unpacked once before
 */
export async function takeArchive(archive: Archive, taking: ArchiveTaking): Promise<TakenFile[]> {
  for (const { read } of [...archive.photos, ...archive.cases, ...archive.lessons]) {
    read();
    await setImmediate();
  }
  const takers = [
    ...archive.photos.map((photo) => () => takeArchivedPhoto(photo, taking)),
    ...archive.cases.map((kase) => () => takeArchivedCase(kase, taking)),
    ...archive.lessons.map((lesson) => () => takeArchivedLesson(lesson, taking)),
  ];
  const taken: TakenFile[] = [];
  for (const take of takers) {
    taken.push(take());
    await setImmediate();
  }
  return taken;
}
