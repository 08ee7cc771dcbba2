import type { z } from "zod";
import type { ContentProblem } from "./contentProblem";
import { explainIssues } from "./explainIssues";
import { readFrontMatter } from "./readFrontMatter";

/** The fields of a Markdown file and the text below them, or everything that kept them from being read. */
export type FieldsReading<Fields> =
  | Readonly<{
      fields: Fields;
      body: string;
      lineOf: (path: readonly PropertyKey[]) => number;
      problems: readonly [];
    }>
  | Readonly<{ fields: undefined; problems: readonly ContentProblem[] }>;

/** Reads a Markdown file's front matter against a schema; all problems come at once. */
export function readFields<Fields>(
  text: string,
  file: string,
  schema: z.ZodType<Fields>,
): FieldsReading<Fields> {
  const { data, body, lineOf, problems } = readFrontMatter(text, file);
  if (problems.length > 0) return { fields: undefined, problems };
  const parsed = schema.safeParse(data);
  return parsed.success
    ? { fields: parsed.data, body, lineOf, problems: [] }
    : { fields: undefined, problems: explainIssues(parsed.error.issues, data, { file, lineOf }) };
}
