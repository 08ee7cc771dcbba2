import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isMap, parseDocument } from "yaml";
import { type Disk, realDisk } from "../keeping/disk";
import { diskFault } from "../keeping/diskFault";
import { parseSettings, type SettingsReading } from "./parseSettings";
import { settingsFile } from "./settingsFile";

/**
 * Writes what the shop reckons with, whole or not at all: beside its place, flushed, then renamed into it. What does not
 * hold is not written; comments in the file stay.
 *
 * @param sent field by field, as plain data; one that is undefined is taken out
 * @param content the content folder
 * @param mark a word that no other save uses at the same time
 * @returns what then stands in the file, or all that kept it from being written
 */
export function writeSettings(
  sent: Readonly<Record<string, unknown>>,
  content: string,
  mark: string,
  disk: Disk = realDisk,
): SettingsReading {
  const path = join(content, settingsFile);
  const half = join(content, `.${settingsFile}.${mark}.half`);
  try {
    const text = overlay(existsSync(path) ? readFileSync(path, "utf8") : "", sent);
    const reading = parseSettings(text);
    if (!reading.settings) return reading;
    try {
      disk.writeWhole(half, Buffer.from(text, "utf8"));
      disk.rename(half, path);
    } finally {
      disk.remove(half);
    }
    disk.flushFolder(content);
    return reading;
  } catch (error) {
    const fault = diskFault(error, content);
    if (!fault) throw error;
    return { settings: undefined, problems: [{ file: settingsFile, line: 0, field: "", ...fault }] };
  }
}

/** The file's text with the fields set; a text that is no group of fields is begun anew. */
function overlay(text: string, sent: Readonly<Record<string, unknown>>): string {
  const read = parseDocument(text);
  const isSound = read.errors.length === 0 && isMap(read.contents);
  const document = isSound ? read : parseDocument("{}\n");
  if (!isSound && isMap(document.contents)) document.contents.flow = false;
  for (const [name, value] of Object.entries(sent)) {
    if (value === undefined) document.delete(name);
    else document.set(name, value);
  }
  return document.toString();
}
