import type { Vocabulary } from "./vocabulary";

/**
 * Counts how many of a numbered part an instrument has: its own word, or its nearest ancestor's that says.
 *
 * @returns a whole number of 1 or more, or undefined where nothing in the tree says
 * @example placesOf(vocabulary, "euphonium", "valve") // 4
 */
export function placesOf(
  { instruments, parts }: Vocabulary,
  instrument: string,
  part: string,
): number | undefined {
  const counted = parts.get(part)?.belongsTo ?? part;
  for (
    let node = instruments.get(instrument);
    node;
    node = node.parent ? instruments.get(node.parent) : undefined
  ) {
    const count = node.places[part] ?? node.places[counted];
    if (count !== undefined) return count;
  }
  return undefined;
}
