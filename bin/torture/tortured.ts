import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { contentFolders } from "@/lib/casebook/files/contentFolder";
import { contentHash } from "@/lib/casebook/keeping/contentHash";
import { type KeepingPlace, keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { parseRevisionName, shortHash } from "@/lib/casebook/keeping/revisionName";
import { writeCase } from "@/lib/casebook/writeCase";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** Long enough for a write to be cut in the middle. */
const paddingLines = 1500;

/** The vocabulary that tortured cases are held against. */
export function torturedVocabulary(): Vocabulary {
  return loadVocabulary(contentFolders(process.env, existsSync).vocabulary).vocabulary;
}

export const torturedPlace = (folder: string): KeepingPlace => keepingPlace(folder, "26-001");

/** A bench sheet in its n-th version, with all that was written in it before. */
export function torturedText(
  vocabulary: Vocabulary,
  version: number,
  lines: readonly string[] = [],
  padding: number = paddingLines,
): string {
  const [instrument = ""] = vocabulary.instruments.keys();
  const fields = {
    id: "26-001",
    title: `Version ${version}`,
    status: "open",
    instrument,
    received: "2026-01-02",
    complaint: "It is saved and saved again.",
  };
  const filler = Array.from({ length: padding }, (_, line) => `Line ${line} of version ${version}.`);
  return writeCase(fields, [...lines, ...filler].join("\n"));
}

/** Names the revisions whose bytes are not those that their name tells. */
export function damagedRevisions({ revisions }: KeepingPlace): string[] {
  if (!existsSync(revisions)) return [];
  return readdirSync(revisions).filter((name) => {
    const revision = parseRevisionName(name);
    return revision && shortHash(contentHash(readFileSync(join(revisions, name)))) !== revision.hash;
  });
}

/** Names what saves left half written, beside the case and among its revisions. */
export function leftHalfWritten({ folder, revisions }: KeepingPlace): string[] {
  return [folder, revisions]
    .filter((one) => existsSync(one))
    .flatMap((one) => readdirSync(one))
    .filter((name) => name.endsWith(".half"));
}
