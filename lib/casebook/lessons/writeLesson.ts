import { writeFrontMatter } from "../../document/writeFrontMatter";
import { type LessonFields, lessonFieldsSchema } from "./lessonFile";

/** Writes a lesson as a Markdown file: its fields, then the word of introduction. */
export const writeLesson = (fields: LessonFields, introduction: string): string =>
  writeFrontMatter(fields, introduction, {
    order: Object.keys(lessonFieldsSchema.shape),
    lineEach: [],
    oneLine: [],
  });
