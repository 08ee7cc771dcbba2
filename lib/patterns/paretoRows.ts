/** One bar of a Pareto chart: what is counted, how often, and the share of all that it has together with those before it, 0..1. */
export type ParetoRow = Readonly<{ value: string; count: number; running: number }>;

/**
 * Orders counts for a Pareto chart: the most frequent first, ties by name, each with the running share of all counts.
 *
 * @param counts value -> how often, each over 0
 * @returns the running shares rise to 1; empty without counts
 * @example paretoRows(new Map([["a", 1], ["b", 3]])) // b 3 at .75, a 1 at 1
 * Source: Juran & Godfrey 1998, Juran's Quality Handbook (Pareto analysis; from memory).
 */
export function paretoRows(counts: ReadonlyMap<string, number>): ParetoRow[] {
  const total = [...counts.values()].reduce((sum, count) => sum + count, 0);
  let before = 0;
  return [...counts]
    .sort(([a, countA], [b, countB]) => countB - countA || (a < b ? -1 : 1))
    .map(([value, count]) => {
      before += count;
      return { value, count, running: before / total };
    });
}
