import { readdirSync } from "node:fs";
import { codeOf } from "../keeping/diskFault";

/**
 * Lists the Markdown files of a folder by name, without those that editors and saves leave behind (`.name`, `name~`).
 *
 * @returns none for a folder that is not there
 */
export function listContentFiles(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(".md") && !name.startsWith("."))
      .sort();
  } catch (error) {
    if (codeOf(error) === "ENOENT") return [];
    throw error;
  }
}
