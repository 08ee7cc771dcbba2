import { lstatSync, readFileSync, type Stats } from "node:fs";
import { join } from "node:path";
import type { ContentProblem } from "../../document/contentProblem";
import { longestFile } from "../../document/readFrontMatter";

/** A file that may be read: how it lies on disk, its bytes when they are asked for, and those as text. */
export type OpenFile = Readonly<{ status: Stats; bytes: () => Buffer; decode: (bytes: Buffer) => string }>;

type Readers<Reading> = Readonly<{
  read: (file: OpenFile) => Reading;
  refuse: (problem: ContentProblem) => Reading;
}>;

const utf8 = new TextDecoder("utf-8", { fatal: true });

/**
 * Opens one file of the content. A link to elsewhere, a folder, a file that is too long, bytes that are no text and whatever
 * else keeps it from being read come back as a problem, not as an exception.
 */
export function openContentFile<Reading>(
  folder: string,
  file: string,
  { read, refuse }: Readers<Reading>,
): Reading {
  const path = join(folder, file);
  const fault = (received: string, expected: string) =>
    refuse({ file, line: 0, field: "", received, expected });
  try {
    const status = lstatSync(path);
    if (status.isSymbolicLink()) return fault("a link to elsewhere", "the file itself in this folder");
    if (!status.isFile()) return fault("a folder or device", "a Markdown file");
    if (status.size > 4 * longestFile)
      return fault(`${status.size} bytes`, `at most ${longestFile} characters a file`);
    return read({ status, bytes: () => readFileSync(path), decode: (bytes) => utf8.decode(bytes) });
  } catch (error) {
    if (error instanceof TypeError) return fault("bytes that are not UTF-8", "the file saved as UTF-8 text");
    if (error instanceof Error)
      return fault(`a file that cannot be opened (${error.message})`, "leave to read it");
    throw error;
  }
}
