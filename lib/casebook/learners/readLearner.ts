import type { ContentProblem } from "../../document/contentProblem";
import { readFields } from "../../document/readFields";
import { type Learner, learnerFieldsSchema } from "./learnerFile";

/** A learner that was read, or everything that kept the file from being read. */
export type LearnerReading =
  | Readonly<{ learner: Learner; problems: readonly [] }>
  | Readonly<{ learner: undefined; problems: readonly ContentProblem[] }>;

/** Reads a learner's file; the id must be that of the file's name. */
export function readLearner(text: string, file: string): LearnerReading {
  const reading = readFields(text, file, learnerFieldsSchema);
  if (!reading.fields) return { learner: undefined, problems: reading.problems };
  const { fields, body, lineOf } = reading;
  if (`${fields.id}.md` === file) return { learner: { ...fields, notes: body, file }, problems: [] };
  const expected = `'${file.replace(/\.md$/, "")}', as the file is named`;
  const problem = { file, line: lineOf(["id"]), field: "id", received: `'${fields.id}'`, expected };
  return { learner: undefined, problems: [problem] };
}
