import type { Case } from "../casebook/caseFile";
import { harmfulRepairs } from "../casebook/harmfulRepairs";
import { isRepairStep } from "../casebook/step";
import { jeffreysInterval } from "../estimate/jeffreysInterval";

/** How often a repair did harm: in `harmed` of `done` finished jobs, the rate between `low` and `high`, 0..1, 19 times in 20. */
export type HarmRate = Readonly<{
  repair: string;
  done: number;
  harmed: number;
  low: number;
  high: number;
  /** What mending the harm cost, minutes, as far as it was written down. */
  minutes: number;
}>;

/**
 * Rates the repairs that did harm at least once; a job counts once a repair, however often it was done in it.
 *
 * @returns the surest harm first: by the low end of the interval, then by how often it was done, ties by id
 * Source: see `jeffreysInterval`.
 */
export function harmRates(cases: Iterable<Case>): HarmRate[] {
  const done = new Map<string, number>();
  const harmed = new Map<string, number>();
  const minutes = new Map<string, number>();
  const add = (counts: Map<string, number>, id: string, count: number) =>
    counts.set(id, (counts.get(id) ?? 0) + count);
  for (const kase of cases) {
    if (kase.status === "open") continue;
    const harmful = harmfulRepairs(kase);
    const tried = [...harmful];
    for (const step of kase.path) {
      if (isRepairStep(step) && !tried.includes(step.repair)) tried.push(step.repair);
    }
    for (const id of tried) add(done, id, 1);
    for (const id of harmful) add(harmed, id, 1);
    for (const harm of kase.harms) add(minutes, harm.repair, harm.minutes);
  }
  return [...harmed]
    .map(([repair, k]) => {
      const n = done.get(repair) ?? k;
      return { repair, done: n, harmed: k, ...jeffreysInterval(k, n), minutes: minutes.get(repair) ?? 0 };
    })
    .sort((a, b) => b.low - a.low || b.done - a.done || (a.repair < b.repair ? -1 : 1));
}
