import type { z } from "zod";
import type { ContentProblem } from "./contentProblem";
import { nearestWord } from "./nearestWord";
import { showValue } from "./showValue";

type Issue = z.core.$ZodIssue;
type Place = Readonly<{ file: string; lineOf: (path: readonly PropertyKey[]) => number }>;

/**
 * Turns a schema's issues into problems that name file, line, field, what was found and what to write.
 *
 * @param data what was parsed, to show what stands at each place
 * @returns one problem an issue, in the schema's order
 */
export function explainIssues(
  issues: readonly Issue[],
  data: unknown,
  { file, lineOf }: Place,
): ContentProblem[] {
  return issues
    .flatMap((issue) => flatten(issue, []))
    .map(({ issue, path }) => ({
      file,
      line: lineOf(path),
      field: path.map(String).join("."),
      expected: expectation(issue),
      received:
        issue.code === "unrecognized_keys"
          ? issue.keys.map(showValue).join(", ")
          : showValue(valueAt(data, path)),
    }));
}

type Placed = Readonly<{ issue: Issue; path: readonly PropertyKey[] }>;

/** A union's issue becomes the issues of the branch that comes nearest: the one that misses the fewest fields, then the fewest issues. */
function flatten(issue: Issue, parent: readonly PropertyKey[]): Placed[] {
  const path = [...parent, ...issue.path];
  if (issue.code !== "invalid_union" || issue.errors.length === 0) return [{ issue, path }];
  const missing = (branch: readonly Issue[]) =>
    branch.filter((inner) => inner.code === "invalid_type" && /undefined/.test(inner.message)).length;
  const [nearest] = [...issue.errors].sort((a, b) => missing(a) - missing(b) || a.length - b.length);
  return (nearest ?? []).flatMap((inner) => flatten(inner, path));
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === "object" && value !== null ? Reflect.get(value, key) : undefined),
    data,
  );
}

function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return a(issue.expected);
    case "invalid_value": {
      const words = issue.values.map(String);
      const meant = typeof issue.input === "string" ? nearestWord(issue.input, words) : undefined;
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
