import { join, resolve } from "node:path";

/** Where the content lies: everything that Benchlore reads and writes is in this one folder. */
export type ContentFolders = Readonly<{
  content: string;
  vocabulary: string;
  cases: string;
  lessons: string;
  learners: string;
}>;

/**
 * Names the content's folders by the one setting there is: `BENCHLORE_CONTENT`, default `content` in the working folder.
 * A casebook of one's own needs no vocabulary of its own: where it has none, the one that comes with Benchlore serves.
 */
export function contentFolders(
  environment: Readonly<Record<string, string | undefined>>,
  hasFolder: (path: string) => boolean,
): ContentFolders {
  const shipped = resolve("content");
  const content = environment.BENCHLORE_CONTENT ? resolve(environment.BENCHLORE_CONTENT) : shipped;
  const own = join(content, "vocabulary");
  return {
    content,
    vocabulary: hasFolder(own) ? own : join(shipped, "vocabulary"),
    cases: join(content, "cases"),
    lessons: join(content, "lessons"),
    learners: join(content, "learners"),
  };
}
