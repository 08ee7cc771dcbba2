import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { type ContentFolders, contentFolders } from "@/lib/casebook/files/contentFolder";
import { type Casebook, loadCasebook } from "@/lib/casebook/loadCasebook";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A casebook opened to put cases in or take copies out: nothing is derived from it. */
export type Shelf = Readonly<{
  folders: ContentFolders;
  vocabulary: Vocabulary;
  casebook: Casebook;
  today: string;
  mark: string;
}>;

/** Opens the casebook that `BENCHLORE_CONTENT` names. */
export function openShelf(): Shelf {
  const folders = contentFolders(process.env, existsSync);
  const { vocabulary } = loadVocabulary(folders.vocabulary);
  return {
    folders,
    vocabulary,
    casebook: loadCasebook(folders.cases, vocabulary),
    today: new Date().toISOString().slice(0, 10),
    mark: randomUUID(),
  };
}
