import { z } from "zod";
import { readSentCase, type SentCase } from "@/lib/casebook/form/sentCase";

/** The browser's own copies of write-ups, one a place: what came from one bench is not mixed up with another. */
const prefix = "write-up:";

const entriesSchema = z.array(z.tuple([z.string(), z.string()]));
export type Entries = z.infer<typeof entriesSchema>;

/**
 * Keeps what was typed in this browser.
 *
 * @returns false where the browser keeps nothing (private window, full store)
 */
export function keepDraft(place: string, entries: Entries): boolean {
  try {
    localStorage.setItem(prefix + place, JSON.stringify(entries));
    return true;
  } catch {
    return false;
  }
}

/** What was typed at a place and not saved, or undefined where nothing was kept that can be read. */
export function keptDraft(place: string): SentCase | undefined {
  const entries = readEntries(prefix + place);
  return entries && readSentCase(entries);
}

export function forgetDraft(place: string): void {
  localStorage.removeItem(prefix + place);
}

/** Forgets every copy of the case with this id. */
export function forgetDrafts(id: string): void {
  for (const key of Object.keys(localStorage)) {
    if (!key.startsWith(prefix)) continue;
    const entries = readEntries(key);
    const isThis = entries?.some(
      ([name, value]) =>
        (name === "id" && value === id) || (name === "text" && new RegExp(`^id: ${id}$`, "m").test(value)),
    );
    if (isThis) localStorage.removeItem(key);
  }
}

function readEntries(key: string): Entries | undefined {
  try {
    return entriesSchema.safeParse(JSON.parse(localStorage.getItem(key) ?? "null")).data;
  } catch {
    return undefined;
  }
}
