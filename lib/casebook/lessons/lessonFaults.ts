import type { ContentProblem } from "../../document/contentProblem";
import type { LessonReading } from "./readLesson";

/** The cases of a lesson that cannot be worked through, each with its line. */
export function lessonFaults(
  { lesson, lineOf }: Extract<LessonReading, { problems: readonly [] }>,
  isFit: (id: string) => boolean,
): ContentProblem[] {
  return lesson.cases.flatMap((id, at) =>
    isFit(id)
      ? []
      : [
          {
            file: lesson.file,
            line: lineOf(["cases", at]),
            field: `cases.${at}`,
            received: `'${id}'`,
            expected: "the id of a closed case with a root cause and at least three checks before the cure",
          },
        ],
  );
}
