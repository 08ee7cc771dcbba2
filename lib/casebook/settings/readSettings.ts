import { readFileSync } from "node:fs";
import { join } from "node:path";
import { codeOf } from "../keeping/diskFault";
import { parseSettings, type SettingsReading } from "./parseSettings";
import { settingsFile } from "./settingsFile";

/**
 * Reads what the shop reckons with from its content folder. A folder without the file says nothing, which is no problem.
 *
 * @param content the content folder
 */
export function readSettings(content: string): SettingsReading {
  try {
    return parseSettings(readFileSync(join(content, settingsFile), "utf8"));
  } catch (error) {
    const code = codeOf(error);
    if (code === "ENOENT") return { settings: undefined, problems: [] };
    if (code === undefined) throw error;
    const received = `a file that cannot be opened (${code})`;
    return {
      settings: undefined,
      problems: [{ file: settingsFile, line: 0, field: "", received, expected: "leave to read it" }],
    };
  }
}
