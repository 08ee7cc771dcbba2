import { writeFrontMatter } from "../../document/writeFrontMatter";
import { type LearnerFields, learnerFieldsSchema } from "./learnerFile";

/** Writes a learner's file, a session a line, with the notes below. */
export const writeLearner = (fields: LearnerFields, notes: string): string =>
  writeFrontMatter(fields, notes, {
    order: Object.keys(learnerFieldsSchema.shape),
    lineEach: ["sessions"],
    oneLine: [],
  });
