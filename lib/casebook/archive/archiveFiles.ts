import { type Dirent, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { ContentFolders } from "../files/contentFolder";
import { codeOf } from "../keeping/diskFault";
import type { Casebook } from "../loadCasebook";
import { readPhotoPlace } from "../photos/photoPlace";
import { readArchivePath } from "./archivePaths";
import type { FileToPack } from "./packArchive";

/** What goes into an archive of a casebook, and what lies beside it and does not. */
export type ArchiveFiles = Readonly<{ files: readonly FileToPack[]; leftOut: readonly string[] }>;

/**
 * Lists the files of a casebook to pack, by name: the file of every case as it stands on disk, under its id, every lesson, and
 * the photos of jobs in both sizes. Left out, and named: case files that could not be read, what is no lesson, what is no
 * photo of a job, and links. Learners' files are nobody else's business: they are not among them.
 */
export function listArchiveFiles(
  { content, cases: folder }: ContentFolders,
  { cases, problems }: Pick<Casebook, "cases" | "problems">,
): ArchiveFiles {
  const files = [...cases.values()].map(({ id, file }) => ({
    path: `cases/${id}.md`,
    read: () => readFileSync(join(folder, file)),
  }));
  const leftOut = new Set(problems.map(({ file }) => `cases/${file}`));
  for (const path of [...walk(content, "lessons", leftOut), ...walk(content, "photos", leftOut)]) {
    if (isCarried(path)) files.push({ path, read: () => readFileSync(join(content, path)) });
    else leftOut.add(path);
  }
  return { files: files.sort((a, b) => (a.path < b.path ? -1 : 1)), leftOut: [...leftOut].sort() };
}

/** Pictures that no job can show are not carried: they would be refused on their way in. */
function isCarried(path: string): boolean {
  const place = readArchivePath(path);
  return place?.kind === "photo" ? readPhotoPlace(place.segments) !== undefined : place !== undefined;
}

function* walk(content: string, folder: string, leftOut: Set<string>): Generator<string> {
  for (const entry of entriesOf(join(content, folder))) {
    const path = `${folder}/${entry.name}`;
    if (entry.name.startsWith(".")) continue;
    if (entry.isDirectory()) yield* walk(content, path, leftOut);
    else if (entry.isFile()) yield path;
    else leftOut.add(path);
  }
}

function entriesOf(folder: string): Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    if (codeOf(error) === "ENOENT") return [];
    throw error;
  }
}
