/**
 * Something wrong in a content file, said so that a person can mend it.
 * `line` counts from 1 in the whole file; 0 where no line can be named.
 */
export type ContentProblem = Readonly<{
  file: string;
  line: number;
  /** Dotted way to the field: `path.2.minutes`; empty for the file as a whole. */
  field: string;
  /** What must hold, or what to write. */
  expected: string;
  /** What stands there, shortened. */
  received: string;
}>;

/**
 * Says a problem in one line: where, what field, what was found and what to write.
 *
 * @example formatProblem({ file: "a.md", line: 7, field: "minutes", expected: "a number of 0 or more", received: "-5" })
 *          // "a.md:7 minutes: found -5; write a number of 0 or more"
 */
export function formatProblem({ file, line, field, expected, received }: ContentProblem): string {
  const place = line > 0 ? `${file}:${line}` : file;
  return `${place} ${field === "" ? "the file" : field}: found ${received}; write ${expected}`;
}
