/**
 * Finds the minimal hitting sets of a collection of conflicts: the smallest ways to put the blame so that every conflict is explained.
 *
 * A breadth-first hitting-set tree: a node that misses a conflict branches on that conflict's members; one that holds a smaller
 * answer is cut off. Every minimal set of size k is reached at depth k, and all smaller ones are known by then.
 *
 * @param conflicts sets of parts, at least one of each at fault; repeats in a set do not matter
 * @param options.maxSize the most parts an answer may have, 0 or more; default no limit
 * @returns each set sorted, sets by size and then in the order of their members; `[[]]` without conflicts (nothing need be at fault);
 * `[]` when a conflict is empty or no set is small enough
 * @throws RangeError when maxSize is not 0 or more
 * @example minimalHittingSets([["a", "b"], ["b", "c"]]) // [["b"], ["a", "c"]]
 * Source: Reiter 1987, A theory of diagnosis from first principles, section 4 (all conflicts known beforehand, so that the
 * correction of Greiner, Smith & Wilkerson 1989 is not needed).
 */
export function minimalHittingSets(
  conflicts: readonly (readonly string[])[],
  options: Readonly<{ maxSize?: number }> = {},
): readonly (readonly string[])[] {
  const { maxSize = Number.POSITIVE_INFINITY } = options;
  if (!(maxSize >= 0))
    throw new RangeError(`maxSize must be 0 or more; got ${maxSize}; leave it out for no limit`);
  const found: (readonly string[])[] = [];
  let level: (readonly string[])[] = [[]];
  for (let size = 0; level.length > 0 && size <= maxSize; size += 1) {
    const next = new Map<string, readonly string[]>();
    const foundHere: (readonly string[])[] = [];
    for (const node of level) {
      if (found.some((smaller) => smaller.every((part) => node.includes(part)))) continue;
      const missed = conflicts.find((conflict) => !conflict.some((part) => node.includes(part)));
      if (missed === undefined) foundHere.push(node);
      for (const part of missed ?? []) {
        const child = [...node, part].sort(byCode);
        next.set(JSON.stringify(child), child);
      }
    }
    found.push(...foundHere.sort(byMembers));
    level = [...next.values()];
  }
  return found;
}

function byCode(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}

/** Sets of one size, by their first member that differs. */
function byMembers(one: readonly string[], other: readonly string[]): number {
  for (const [index, part] of one.entries()) {
    const order = byCode(part, other[index] ?? "");
    if (order !== 0) return order;
  }
  return 0;
}
