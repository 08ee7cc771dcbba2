import type { ContentProblem } from "../document/contentProblem";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { Case } from "./caseFile";
import { listContentFiles } from "./files/listContentFiles";
import { openContentFile } from "./files/openContentFile";
import { type KeptCase, keepCase } from "./keptCase";
import { type Held, LateMap } from "./lateMap";
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

/** A casebook as it was loaded, with the ids of the cases that name photos. */
export type LoadedCasebook = Casebook & Readonly<{ photographed: readonly string[] }>;

/**
 * Loads every `.md` file of the cases folder. A broken file is set aside with its problems and never hides the good ones;
 * a file that leads out of the folder by a link is not followed; of two files with one id the first by name is kept.
 *
 * @param folder the cases folder; one that does not exist is an empty casebook
 * @param place where the snapshot lies that saves parsing what has not changed; without one every file is parsed
 * @returns the same casebook with a snapshot and without; a case out of the snapshot is parsed when it is first asked for
 */
export function loadCasebook(folder: string, vocabulary: Vocabulary, place?: SnapshotPlace): LoadedCasebook {
  const memory = place && openCaseMemory(place, folder, vocabulary);
  const held = new Map<string, Held<Case>>();
  const problems: ContentProblem[] = [];
  const hashes = new Map<string, string>();
  const photographed: string[] = [];
  for (const file of listContentFiles(folder)) {
    const reading = keepCaseFile(folder, file, vocabulary, memory);
    problems.push(...reading.problems);
    if (!reading.kept) continue;
    const { id, isPhotographed } = reading.kept;
    const twin = held.get(id);
    if (twin) {
      const expected = `an id of its own (${twin.value.file} has it already)`;
      problems.push({ file, line: 2, field: "id", received: `'${id}'`, expected });
    } else {
      held.set(id, reading.kept.case);
      if (isPhotographed) photographed.push(id);
      const hash = memory?.hashOf(file);
      if (hash !== undefined) hashes.set(id, hash);
    }
  }
  const cases = new LateMap(held);
  if (!memory) return { cases, problems, photographed };
  const former = memory.former();
  memory.save();
  return { cases, problems, photographed, hashes, former };
}

/** Reads one case file from disk; anything that keeps it from being read comes back as a problem, not as an exception. */
export function readCaseFile(folder: string, file: string, vocabulary: Vocabulary): CaseReading {
  const { kept, problems } = keepCaseFile(folder, file, vocabulary);
  return kept ? { case: kept.case.value, problems: [] } : { case: undefined, problems };
}

type KeptReading = Readonly<{ kept: KeptCase | undefined; problems: readonly ContentProblem[] }>;

function keepCaseFile(
  folder: string,
  file: string,
  vocabulary: Vocabulary,
  memory?: CaseMemory,
): KeptReading {
  return openContentFile<KeptReading>(folder, file, {
    refuse: (problem) => ({ kept: undefined, problems: [problem] }),
    read: ({ status, bytes, decode }) => {
      const untouched = memory?.recallUntouched(file, status);
      if (untouched) return { kept: untouched, problems: [] };
      const whole = bytes();
      const same = memory?.recallSame(file, status, whole);
      if (same) return { kept: same, problems: [] };
      const { case: kase, problems } = readCase(decode(whole), file, vocabulary);
      if (kase) memory?.learn(file, status, whole, kase);
      return { kept: kase && keepCase(kase), problems };
    },
  });
}
