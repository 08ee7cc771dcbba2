import type { Vocabulary } from "./vocabulary";

/**
 * Tells how near to an instrument the nearest of the families is that an entry was written for: its depth in the tree.
 *
 * @returns 0 where the instrument is not known or none of the families is over it
 * @example depthOfFamily(vocabulary, ["brass", "slide-brass"], "trombone") // the depth of slide-brass
 */
export function depthOfFamily(
  { instruments, instrumentTree }: Vocabulary,
  families: readonly string[],
  instrument: string | undefined,
): number {
  if (instrument === undefined || !instruments.has(instrument)) return 0;
  const over = families.filter((family) => instrumentTree.isA(instrument, family));
  return Math.max(0, ...over.map((family) => instrumentTree.depth(family)));
}
