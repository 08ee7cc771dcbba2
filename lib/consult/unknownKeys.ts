import { nearestWord } from "../document/nearestWord";
import { problemSchema } from "./problem";

/**
 * Names the keys of a problem that nothing reads, a sentence each: a slip there ("swap" for "swaps") would lose what was written.
 *
 * @param data one problem or a list of them, as they were given
 */
export function unknownKeys(data: unknown): string[] {
  if (Array.isArray(data)) {
    return data.flatMap((problem, at) => unknownKeys(problem).map((words) => `problem ${at + 1}: ${words}`));
  }
  if (typeof data !== "object" || data === null) return [];
  const known = Object.keys(problemSchema.shape);
  return Object.keys(data)
    .filter((key) => !known.includes(key))
    .map((key) => {
      const meant = nearestWord(key, known);
      return `the key '${key}' is not read${meant === undefined ? "" : `; did you mean '${meant}'?`}`;
    });
}
