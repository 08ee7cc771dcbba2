import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { type ContentFolders, contentFolders } from "../../casebook/files/contentFolder";
import { loadDeclinedWords } from "../../casebook/keeping/loadDeclinedWords";
import { type Casebook, loadCasebook } from "../../casebook/loadCasebook";
import { findMissingPhotos } from "../../casebook/photos/findMissingPhotos";
import { readSettings } from "../../casebook/settings/readSettings";
import { snapshotPlace } from "../../casebook/snapshot/snapshotPlace";
import { ContentFault } from "../../document/contentFault";
import type { ContentProblem } from "../../document/contentProblem";
import { loadVocabulary } from "../../vocabulary/loadVocabulary";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { type Bench, buildBench } from "./bench";
import { loadLearned } from "./learned/loadLearned";
import { loadTextIndex } from "./loadTextIndex";

/** A bench with the content it was built from and everything in it that could not be read. */
export type OpenBench = Readonly<{
  folders: ContentFolders;
  casebook: Casebook;
  bench: Bench;
  problems: readonly ContentProblem[];
}>;

/**
 * Loads the content, as far as it goes from the snapshot of an earlier start, and derives the bench from it.
 *
 * @throws ContentFault when the vocabulary has nothing to go by
 */
export function openBench(environment: Readonly<Record<string, string | undefined>>): OpenBench {
  const folders = contentFolders(environment, existsSync);
  const { vocabulary, problems } = loadVocabulary(folders.vocabulary);
  mustHaveEntries(vocabulary, folders.vocabulary);
  const place = snapshotPlace(folders, environment, { nowMs: Date.now(), mark: randomUUID() });
  const casebook = loadCasebook(folders.cases, vocabulary, place);
  return {
    folders,
    casebook,
    bench: buildBench(vocabulary, casebook, {
      indexText: (cases, words) => loadTextIndex(cases, words, place),
      learn: (cases, teaching) => loadLearned(cases, teaching, place),
    }),
    problems: [
      ...problems,
      ...casebook.problems,
      ...findMissingPhotos(
        casebook.photographed.flatMap((id) => casebook.cases.get(id) ?? []),
        folders,
      ),
      ...readSettings(folders.content).problems,
      ...loadDeclinedWords(folders.content).problems,
    ],
  };
}

/** Without one entry of each of these nothing can be asked or answered. */
function mustHaveEntries(vocabulary: Vocabulary, folder: string): void {
  const missing = (["instruments", "parts", "checks", "causes"] as const).filter(
    (kind) => vocabulary[kind].size === 0,
  );
  if (missing.length === 0) return;
  throw new ContentFault(
    `${folder}: found no ${missing.join(", no ")} that can be read; write some, or take this folder away: then the vocabulary ` +
      "that comes with Benchlore serves",
  );
}
