import type { ContentProblem } from "../document/contentProblem";
import { explainIssues } from "../document/explainIssues";
import { readFrontMatter } from "../document/readFrontMatter";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { type Case, caseSchema } from "./caseFile";
import { findCaseFaults } from "./findCaseFaults";
import { placeOfStepKind } from "./step";

/** A case that was read, or everything that kept it from being read. */
export type CaseReading =
  | Readonly<{ case: Case; problems: readonly [] }>
  | Readonly<{ case: undefined; problems: readonly ContentProblem[] }>;

/**
 * Reads one case file: front matter against the schema, then its ids against the vocabulary. All problems come at once.
 *
 * @param text the whole file
 * @param file its name, for the problems' words and the case's own
 * @example readCase(text, "24-031.md", vocabulary).case?.title
 */
export function readCase(text: string, file: string, vocabulary: Vocabulary): CaseReading {
  const { data, body, lineOf, problems } = readFrontMatter(text, file);
  if (problems.length > 0) return { case: undefined, problems };
  const parsed = caseSchema.safeParse(data);
  if (!parsed.success) {
    return {
      case: undefined,
      problems: explainIssues(parsed.error.issues, data, { file, lineOf, branchOf: placeOfStepKind }),
    };
  }
  const faults = findCaseFaults(parsed.data, vocabulary).map(({ path, expected, received }) => ({
    file,
    line: lineOf(path),
    field: path.map(String).join("."),
    expected,
    received,
  }));
  if (faults.length > 0) return { case: undefined, problems: faults };
  return { case: { ...parsed.data, story: body, file }, problems: [] };
}
