import { listArchiveFiles } from "../../casebook/archive/archiveFiles";
import { packArchive } from "../../casebook/archive/packArchive";
import type { ContentFolders } from "../../casebook/files/contentFolder";
import type { Casebook } from "../../casebook/loadCasebook";
import { casebookCsv } from "./casebookCsv";
import { casebookJson } from "./casebookJson";

/** The forms in which a copy of the casebook goes out, with their media types. */
export const exportFormats = {
  csv: "text/csv; charset=utf-8",
  json: "application/json; charset=utf-8",
  zip: "application/zip",
} as const;
export type ExportFormat = keyof typeof exportFormats;

export const isExportFormat = (text: string): text is ExportFormat => Object.hasOwn(exportFormats, text);

/** A copy of the casebook in pieces, made as they are asked for, and the files that are not in it. */
export type CasebookCopy = Readonly<{ pieces: Iterable<Uint8Array>; leftOut: readonly string[] }>;

/**
 * Makes a copy of the casebook: a table, plain data, or a zip of the very files with the photos. Case files that could not be
 * read are in none of them, and are named.
 */
export function exportCasebook(
  format: ExportFormat,
  folders: ContentFolders,
  casebook: Casebook,
): CasebookCopy {
  const unread = [...new Set(casebook.problems.map(({ file }) => `cases/${file}`))];
  switch (format) {
    case "csv":
      return { pieces: [Buffer.from(casebookCsv(casebook.cases.values()))], leftOut: unread };
    case "json": {
      const text = JSON.stringify(casebookJson(casebook.cases.values()), null, 2);
      return { pieces: [Buffer.from(`${text}\n`)], leftOut: unread };
    }
    case "zip": {
      const { files, leftOut } = listArchiveFiles(folders, casebook);
      return { pieces: packArchive(files), leftOut };
    }
  }
}
