import "server-only";
import { existsSync } from "node:fs";
import { contentFolders } from "@/lib/casebook/files/contentFolder";
import { type ContentShelf, openContentShelf } from "@/lib/casebook/files/openContentShelf";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import { readLearner } from "@/lib/casebook/learners/readLearner";

/** The learners' files and the folder that they lie in. */
export type LearnerShelf = ContentShelf<Learner> & Readonly<{ folder: string }>;

declare global {
  /** One shelf a process: what was read of the files serves every request. */
  var benchloreLearners: LearnerShelf | undefined;
}

/** The learners' shelf, opened on first use. */
export function learnerShelf(): LearnerShelf {
  if (globalThis.benchloreLearners === undefined) {
    const { learners: folder } = contentFolders(process.env, existsSync);
    const shelf = openContentShelf(folder, (text, file) => {
      const { learner, problems } = readLearner(text, file);
      return { entry: learner, problems };
    });
    globalThis.benchloreLearners = { ...shelf, folder };
  }
  return globalThis.benchloreLearners;
}
