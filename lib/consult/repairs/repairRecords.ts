import type { Case } from "../../casebook/caseFile";
import { repairsDone } from "../../casebook/repairsDone";

/** What a repair did that it should not have, in which case and when that came in. */
export type RecordedHarm = Readonly<{ case: string; received: string; what: string }>;

/** How often a repair was done on one kind of instrument, and how often it did harm there. */
type RepairCount = Readonly<{ instrument: string; done: number; harmed: number }>;

/**
 * How a repair has turned out: jobs in which it was done, jobs in which it did harm, and what the harm was; the jobs again by
 * instrument, in the order of the ids.
 */
export type RepairRecord = Readonly<{
  done: number;
  harmed: number;
  harms: readonly RecordedHarm[];
  counts: readonly RepairCount[];
}>;

/** The record of a repair that was never done. */
export const noRecord: RepairRecord = { done: 0, harmed: 0, harms: [], counts: [] };

/** Adds a case's repairs to the records, or with `sign` -1 takes them back. */
export function recordRepairs(records: Map<string, RepairRecord>, kase: Case, sign: 1 | -1 = 1): void {
  const { id: caseId, instrument, received, harms } = kase;
  for (const [id, didHarm] of repairsDone(kase)) {
    const before = records.get(id) ?? noRecord;
    const own = harms
      .filter(({ repair }) => repair === id)
      .map(({ what }) => ({ case: caseId, received, what }));
    const more = { instrument, done: sign, harmed: didHarm ? sign : 0 };
    records.set(id, {
      done: before.done + more.done,
      harmed: before.harmed + more.harmed,
      harms: sign > 0 ? [...before.harms, ...own] : before.harms.filter((harm) => harm.case !== caseId),
      counts: addCount(before.counts, more),
    });
  }
}

function addCount(counts: readonly RepairCount[], more: RepairCount): readonly RepairCount[] {
  const before = counts.find(({ instrument }) => instrument === more.instrument);
  const done = (before?.done ?? 0) + more.done;
  const harmed = (before?.harmed ?? 0) + more.harmed;
  const others = counts.filter((count) => count !== before);
  if (done === 0) return others;
  return [...others, { instrument: more.instrument, done, harmed }].sort((a, b) =>
    a.instrument < b.instrument ? -1 : 1,
  );
}

/**
 * What a repair did that it should not have: in the cases named first, then in others; of both the last first, by when the
 * case came in, ties by case id.
 *
 * @param most how many at most, 1 or more
 */
export function firstHarms(
  { harms }: RepairRecord,
  most: number,
  cases: ReadonlySet<string>,
): readonly RecordedHarm[] {
  const goesBefore = (a: RecordedHarm, b: RecordedHarm) => {
    if (cases.has(a.case) !== cases.has(b.case)) return cases.has(a.case);
    return a.received > b.received || (a.received === b.received && a.case > b.case);
  };
  return harms.reduce<readonly RecordedHarm[]>((first, harm) => {
    const at = first.findIndex((other) => goesBefore(harm, other));
    return [...first.slice(0, at < 0 ? most : at), harm, ...(at < 0 ? [] : first.slice(at))].slice(0, most);
  }, []);
}
