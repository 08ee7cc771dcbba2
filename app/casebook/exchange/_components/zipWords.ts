const kinds = [
  { folder: "cases/", one: "case", several: "cases" },
  { folder: "lessons/", one: "lesson", several: "lessons" },
  { folder: "photos/", one: "picture file", several: "picture files" },
] as const;

/**
 * Counts the files of a zip in words, by what they are.
 *
 * @param paths at least one
 * @example kindWords(["cases/24-001.md", "lessons/a.md", "lessons/b.md"]) // "1 case, 2 lessons"
 */
export const kindWords = (paths: readonly string[]) =>
  kinds
    .flatMap(({ folder, one, several }) => {
      const count = paths.filter((path) => path.startsWith(folder)).length;
      return count === 0 ? [] : [`${count} ${count === 1 ? one : several}`];
    })
    .join(", ");

/** The id of the case that a file of a zip is; empty for any other file. */
export const caseOfPath = (path: string) => /^cases\/(.+)\.md$/.exec(path)?.[1] ?? "";
