import type { z } from "zod";
import type { ContentProblem } from "./contentProblem";
import { nearestWord } from "./nearestWord";
import { showValue } from "./showValue";

type Issue = z.core.$ZodIssue;
type Place = Readonly<{
  file: string;
  lineOf: (path: readonly PropertyKey[]) => number;
  /** Which branch of a union a value means to be, where that shows in it; -1 where it shows that it is none of them. */
  branchOf?: (value: unknown) => number | undefined;
}>;

/**
 * Turns a schema's issues into problems that name file, line, field, what was found and what to write.
 *
 * @param data what was parsed, to show what stands at each place
 * @returns one problem an issue, in the schema's order; a field of the wrong type is said once, whatever else it breaks
 */
export function explainIssues(
  issues: readonly Issue[],
  data: unknown,
  { file, lineOf, branchOf = () => undefined }: Place,
): ContentProblem[] {
  const placed = issues.flatMap((issue) => flatten(issue, [], (path) => branchOf(valueAt(data, path))));
  const wrongType = new Set(placed.flatMap(({ issue, path }) => (isWrongType(issue) ? fieldOf(path) : [])));
  return placed
    .filter(({ issue, path }) => isWrongType(issue) || !wrongType.has(fieldOf(path)))
    .map(({ issue, path }) => ({
      file,
      line: lineOf(path),
      field: fieldOf(path),
      expected: expectation(issue, valueAt(data, path)),
      received:
        issue.code === "unrecognized_keys"
          ? issue.keys.map(showValue).join(", ")
          : showValue(valueAt(data, path)),
    }));
}

type Placed = Readonly<{ issue: Issue; path: readonly PropertyKey[] }>;

const isWrongType = ({ code }: Issue) => code === "invalid_type";
const fieldOf = (path: readonly PropertyKey[]) => path.map(String).join(".");

/**
 * A union's issue becomes the issues of the branch that the value means to be; where that does not show, of the one that
 * comes nearest: that misses the fewest fields, then has the fewest issues.
 */
function flatten(
  issue: Issue,
  parent: readonly PropertyKey[],
  branchAt: (path: readonly PropertyKey[]) => number | undefined,
): Placed[] {
  const path = [...parent, ...issue.path];
  if (issue.code !== "invalid_union" || issue.errors.length === 0) return [{ issue, path }];
  const meant = branchAt(path);
  if (meant === -1) return [{ issue, path }];
  const missing = (branch: readonly Issue[]) =>
    branch.filter((inner) => inner.code === "invalid_type" && /undefined/.test(inner.message)).length;
  const [nearest] = [...issue.errors].sort((a, b) => missing(a) - missing(b) || a.length - b.length);
  const branch = meant === undefined ? nearest : issue.errors[meant];
  return (branch ?? []).flatMap((inner) => flatten(inner, path, branchAt));
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === "object" && value !== null ? Reflect.get(value, key) : undefined),
    data,
  );
}

function expectation(issue: Issue, value: unknown): string {
  switch (issue.code) {
    case "invalid_type":
      if (!issue.message.startsWith("Invalid input")) return issue.message;
      return issue.expected === "string" && (typeof value === "number" || typeof value === "boolean")
        ? `words in quotes, such as '${value}'`
        : a(issue.expected);
    case "invalid_value": {
      const words = issue.values.map(String);
      const meant = typeof value === "string" ? nearestWord(value, words) : undefined;
      return meant ? `'${meant}' (one of: ${words.join(", ")})` : `one of: ${words.join(", ")}`;
    }
    case "too_small":
      return issue.origin === "number" || issue.origin === "int"
        ? `a number of ${issue.minimum} or more`
        : `at least ${issue.minimum} ${issue.origin === "string" ? "characters" : "entries"}`;
    case "too_big":
      return issue.origin === "number" || issue.origin === "int"
        ? `a number of ${issue.maximum} or less`
        : `at most ${issue.maximum} ${issue.origin === "string" ? "characters" : "entries"}`;
    case "unrecognized_keys":
      return "no such field here: look for a slip in its name";
    case "invalid_format":
    case "custom":
      return issue.message;
    default:
      return issue.message;
  }
}

const names: Readonly<Record<string, string>> = {
  string: "words",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "fields under it",
  record: "fields under it",
  tuple: "a list of two",
};
const a = (expected: string) => names[expected] ?? expected;
