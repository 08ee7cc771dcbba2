import type { ContentProblem } from "../../document/contentProblem";
import { readFields } from "../../document/readFields";
import { type Lesson, lessonFieldsSchema } from "./lessonFile";

/** A lesson that was read, or everything that kept the file from being read. */
export type LessonReading =
  | Readonly<{ lesson: Lesson; lineOf: (path: readonly PropertyKey[]) => number; problems: readonly [] }>
  | Readonly<{ lesson: undefined; problems: readonly ContentProblem[] }>;

/** Reads a lesson's file; the id must be that of the file's name. */
export function readLesson(text: string, file: string): LessonReading {
  const reading = readFields(text, file, lessonFieldsSchema);
  if (!reading.fields) return { lesson: undefined, problems: reading.problems };
  const { fields, body, lineOf } = reading;
  if (`${fields.id}.md` === file)
    return { lesson: { ...fields, introduction: body, file }, lineOf, problems: [] };
  const expected = `'${file.replace(/\.md$/, "")}', as the file is named`;
  const problem = { file, line: lineOf(["id"]), field: "id", received: `'${fields.id}'`, expected };
  return { lesson: undefined, problems: [problem] };
}
