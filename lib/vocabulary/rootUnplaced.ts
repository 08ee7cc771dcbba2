import type { ContentProblem } from "../document/contentProblem";
import { nearestWord } from "../document/nearestWord";

type Node = Readonly<{ id: string; parent?: string }>;

/**
 * Entries that form a tree: one whose parent is missing, or that would stand above itself, is kept and stands at the top.
 *
 * @param file where the entries are from
 * @param problems gets one for every parent that was passed over
 */
export function rootUnplaced<Entry extends Node>(
  entries: ReadonlyMap<string, Entry>,
  file: string,
  problems: ContentProblem[],
): Map<string, Entry> {
  const placed = new Map(entries);
  for (const { id, parent } of entries.values()) {
    if (parent === undefined) continue;
    const isMissing = !entries.has(parent);
    if (!isMissing && !isAbove(placed, id, parent)) continue;
    problems.push({
      file,
      line: 0,
      field: "parent",
      received: `'${parent}' over '${id}'`,
      expected: isMissing
        ? nearestOther(parent, id, entries.keys())
        : "a parent that does not stand under it",
    });
    const entry = placed.get(id);
    if (entry) placed.set(id, { ...entry, parent: undefined });
  }
  return placed;
}

/** Whether an id stands above another one, or is it. */
function isAbove(entries: ReadonlyMap<string, Node>, id: string, other: string): boolean {
  const met = new Set<string>();
  for (let at: string | undefined = other; at !== undefined && !met.has(at); at = entries.get(at)?.parent) {
    if (at === id) return true;
    met.add(at);
  }
  return false;
}

function nearestOther(parent: string, id: string, known: Iterable<string>): string {
  const others = [...known].filter((other) => other !== id);
  const meant = nearestWord(parent, others);
  return meant ? `'${meant}', or the id of another entry` : "the id of another entry";
}
