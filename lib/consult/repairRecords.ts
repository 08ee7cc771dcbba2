import type { Case } from "../casebook/caseFile";
import { isRepairStep } from "../casebook/step";

/** How a repair has turned out: jobs in which it was done, jobs in which it did harm, and what the harm was. */
export type RepairRecord = Readonly<{ done: number; harmed: number; harms: readonly string[] }>;

/** Adds a case's repairs to the records, or with `sign` -1 takes them back. */
export function recordRepairs(
  records: Map<string, RepairRecord>,
  { path, harms }: Case,
  sign: 1 | -1 = 1,
): void {
  for (const id of new Set(path.filter(isRepairStep).map(({ repair }) => repair))) {
    const before = records.get(id) ?? { done: 0, harmed: 0, harms: [] };
    const own = harms.filter(({ repair }) => repair === id).map(({ what }) => what);
    records.set(id, {
      done: before.done + sign,
      harmed: before.harmed + (own.length > 0 ? sign : 0),
      harms: sign > 0 ? [...before.harms, ...own] : before.harms.filter((what) => !own.includes(what)),
    });
  }
}
