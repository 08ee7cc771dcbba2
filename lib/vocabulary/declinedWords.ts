import { stringify } from "yaml";
import { z } from "zod";
import type { ContentProblem } from "../document/contentProblem";
import { explainIssues } from "../document/explainIssues";
import { readYaml } from "../document/readYaml";
import { type WordChange, wordChangeSchema } from "./wordChange";

/** Where the changes of words lie that the shop decided against: beside the cases, for they are the shop's own. */
export const declinedFile = "declined-words.yaml";

/** The changes that were decided against, and what is wrong with the file. */
export type DeclinedWords = Readonly<{
  declined: readonly WordChange[];
  problems: readonly ContentProblem[];
}>;

/** Reads the declined changes from the text of their file; an empty one has none. */
export function readDeclinedWords(text: string): DeclinedWords {
  const reading = readYaml(text, declinedFile);
  if (reading.problems.length > 0) return { declined: [], problems: reading.problems };
  const list = z.array(wordChangeSchema).safeParse(reading.data ?? []);
  if (list.success) return { declined: list.data, problems: [] };
  const file = { file: declinedFile, lineOf: reading.lineOf };
  return { declined: [], problems: explainIssues(list.error.issues, reading.data, file) };
}

/** Adds a declined change at the end of the text, which stays as it is. */
export function addDeclinedWord(text: string, change: WordChange): string {
  const line = stringify([change], { collectionStyle: "flow", lineWidth: 0 }).trim().slice(1, -1).trim();
  const head =
    text === "" ? "# Words of the handbook that stay although the cases speak for another.\n" : text;
  return `${head}${head.endsWith("\n") ? "" : "\n"}- ${line}\n`;
}
