import type { ContentProblem } from "../document/contentProblem";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Case } from "./caseFile";
import { listContentFiles } from "./files/listContentFiles";
import { openContentFile } from "./files/openContentFile";
import { type CaseReading, readCase } from "./readCase";
import { type CaseMemory, openCaseMemory } from "./snapshot/caseMemory";
import type { SnapshotPlace } from "./snapshot/snapshotPlace";

/** All cases by id, and what was set aside because it could not be read. `cases` is written to by `putCase` only. */
export type Casebook = Readonly<{
  cases: Map<string, Case>;
  problems: readonly ContentProblem[];
  /** By id the SHA-256 of the file that a case was read from, where it was loaded with a snapshot; of no case put in since. */
  hashes?: ReadonlyMap<string, string>;
  /** By the SHA-256 of their file, cases as the snapshot had them whose file has changed or gone since. */
  former?: ReadonlyMap<string, Case>;
}>;

/**
 * Loads every `.md` file of the cases folder. A broken file is set aside with its problems and never hides the good ones;
 * a file that leads out of the folder by a link is not followed; of two files with one id the first by name is kept.
 *
 * @param folder the cases folder; one that does not exist is an empty casebook
 * @param place where the snapshot lies that saves parsing what has not changed; without one every file is parsed
 * @returns the same casebook with a snapshot and without
 */
export function loadCasebook(folder: string, vocabulary: Vocabulary, place?: SnapshotPlace): Casebook {
  const memory = place && openCaseMemory(place, folder, vocabulary);
  const cases = new Map<string, Case>();
  const problems: ContentProblem[] = [];
  const hashes = new Map<string, string>();
  for (const file of listContentFiles(folder)) {
    const reading = readCaseFile(folder, file, vocabulary, memory);
    problems.push(...reading.problems);
    if (!reading.case) continue;
    const twin = cases.get(reading.case.id);
    if (twin) {
      const expected = `an id of its own (${twin.file} has it already)`;
      problems.push({ file, line: 2, field: "id", received: `'${reading.case.id}'`, expected });
    } else {
      cases.set(reading.case.id, reading.case);
      const hash = memory?.hashOf(file);
      if (hash !== undefined) hashes.set(reading.case.id, hash);
    }
  }
  if (!memory) return { cases, problems };
  const former = memory.former();
  memory.save();
  return { cases, problems, hashes, former };
}

/** Reads one case file from disk; anything that keeps it from being read comes back as a problem, not as an exception. */
export function readCaseFile(
  folder: string,
  file: string,
  vocabulary: Vocabulary,
  memory?: CaseMemory,
): CaseReading {
  return openContentFile<CaseReading>(folder, file, {
    refuse: (problem) => ({ case: undefined, problems: [problem] }),
    read: ({ status, bytes, decode }) => {
      const untouched = memory?.recallUntouched(file, status);
      if (untouched) return { case: untouched, problems: [] };
      const whole = bytes();
      const same = memory?.recallSame(file, status, whole);
      if (same) return { case: same, problems: [] };
      const reading = readCase(decode(whole), file, vocabulary);
      if (reading.case) memory?.learn(file, status, whole, reading.case);
      return reading;
    },
  });
}
