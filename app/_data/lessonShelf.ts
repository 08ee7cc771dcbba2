import "server-only";
import { existsSync } from "node:fs";
import { contentFolders } from "@/lib/casebook/files/contentFolder";
import { type ContentShelf, openContentShelf } from "@/lib/casebook/files/openContentShelf";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import { readLesson } from "@/lib/casebook/lessons/readLesson";
import { idSchema } from "@/lib/vocabulary/words";

/** The lessons and the folder that they lie in. */
export type LessonShelf = ContentShelf<Lesson> & Readonly<{ folder: string }>;

declare global {
  /** One shelf a process: what was read of the files serves every request. */
  var benchloreLessons: LessonShelf | undefined;
}

/** The lessons' shelf, opened on first use. */
export function lessonShelf(): LessonShelf {
  if (globalThis.benchloreLessons === undefined) {
    const { lessons: folder } = contentFolders(process.env, existsSync);
    const shelf = openContentShelf(folder, (text, file) => {
      const { lesson, problems } = readLesson(text, file);
      return { entry: lesson, problems };
    });
    globalThis.benchloreLessons = { ...shelf, folder };
  }
  return globalThis.benchloreLessons;
}

/** The lesson of an id from outside; undefined for what is no id, or no lesson's. */
export function lessonOf(id: string | null | undefined): Lesson | undefined {
  const known = idSchema.safeParse(id);
  return known.success ? lessonShelf().get(`${known.data}.md`) : undefined;
}
