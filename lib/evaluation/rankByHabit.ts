import type { Case } from "../casebook/caseFile";
import { rootCauses } from "../casebook/rootCauses";
import type { Bench } from "../consult/bench/bench";

/**
 * Ranks causes for a past case by what such an instrument usually has, as a baseline: the root causes of the other cases
 * of its instrument, the commonest first, then those of the nearest family that has more.
 *
 * @returns the rank of the case's own root cause from 1, ties in favour of none (by id); Infinity where no case has it
 */
export function rankByHabit(kase: Case, { cases, vocabulary }: Bench): number {
  const ranked = new Set<string>();
  let family: string | undefined = kase.instrument;
  while (family !== undefined) {
    const within: string = family;
    const counts = new Map<string, number>();
    for (const other of cases.values()) {
      if (other.id === kase.id || !vocabulary.instrumentTree.isA(other.instrument, within)) continue;
      for (const cause of rootCauses(other)) counts.set(cause, (counts.get(cause) ?? 0) + 1);
    }
    const commonest = [...counts].sort(([a, many], [b, more]) => more - many || (a < b ? -1 : 1));
    for (const [cause] of commonest) ranked.add(cause);
    family = vocabulary.instruments.get(within)?.parent;
  }
  const at = [...ranked].findIndex((cause) => rootCauses(kase).includes(cause));
  return at < 0 ? Number.POSITIVE_INFINITY : at + 1;
}
