import type { ContentProblem } from "../../document/contentProblem";
import type { FileKeeper } from "../keeping/holdFile";
import { keepingPlace } from "../keeping/keepingPlace";
import { type RevisedFile, reviseFile } from "../keeping/reviseFile";
import { lessonFaults } from "./lessonFaults";
import type { LessonFields } from "./lessonFile";
import { readLesson } from "./readLesson";
import { writeLesson } from "./writeLesson";

export type LessonEdit = Readonly<{ fields: LessonFields; introduction: string; baseHash: string }>;

/**
 * Saves a lesson, new or over the version that was edited; see `reviseFile`.
 *
 * @param isFit whether a case can be worked through
 */
export function saveLesson(
  edit: LessonEdit,
  folder: string,
  isFit: (id: string) => boolean,
  keeper: FileKeeper,
): RevisedFile {
  const { text, problems } = checkLesson(edit, isFit);
  if (problems.length > 0) return { kind: "refused", problems };
  const { id } = edit.fields;
  return reviseFile({ text, baseHash: edit.baseHash }, keepingPlace(folder, id), keeper);
}

/** Writes a lesson out without saving it, with all that would keep it from being saved. */
export function checkLesson(
  { fields, introduction }: Pick<LessonEdit, "fields" | "introduction">,
  isFit: (id: string) => boolean,
): Readonly<{ text: string; problems: readonly ContentProblem[] }> {
  const text = writeLesson(fields, introduction);
  const reading = readLesson(text, `${fields.id}.md`);
  return { text, problems: reading.lesson ? lessonFaults(reading, isFit) : reading.problems };
}
