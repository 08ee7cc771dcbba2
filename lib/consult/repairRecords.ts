import type { Case } from "../casebook/caseFile";
import { isRepairStep } from "../casebook/step";

/** What a repair did that it should not have, in which case and when that came in. */
export type RecordedHarm = Readonly<{ case: string; received: string; what: string }>;

/** How a repair has turned out: jobs in which it was done, jobs in which it did harm, and what the harm was. */
export type RepairRecord = Readonly<{ done: number; harmed: number; harms: readonly RecordedHarm[] }>;

/** Adds a case's repairs to the records, or with `sign` -1 takes them back. */
export function recordRepairs(
  records: Map<string, RepairRecord>,
  { id: caseId, received, path, harms }: Case,
  sign: 1 | -1 = 1,
): void {
  for (const id of new Set(path.filter(isRepairStep).map(({ repair }) => repair))) {
    const before = records.get(id) ?? { done: 0, harmed: 0, harms: [] };
    const own = harms
      .filter(({ repair }) => repair === id)
      .map(({ what }) => ({ case: caseId, received, what }));
    const didHarm = own.length > 0;
    records.set(id, {
      done: before.done + sign,
      harmed: before.harmed + (didHarm ? sign : 0),
      harms: !didHarm
        ? before.harms
        : sign > 0
          ? [...before.harms, ...own]
          : before.harms.filter((harm) => harm.case !== caseId),
    });
  }
}

/** The harm of the case that came in last; ties by case id. Of one case, what it lists first. */
export function latestHarm({ harms }: RepairRecord): RecordedHarm | undefined {
  const isLater = (a: RecordedHarm, b: RecordedHarm) =>
    a.received > b.received || (a.received === b.received && a.case > b.case);
  return harms.reduce<RecordedHarm | undefined>(
    (latest, harm) => (latest === undefined || isLater(harm, latest) ? harm : latest),
    undefined,
  );
}
