import type { Case } from "../../casebook/caseFile";

type Job = Readonly<{ instrument?: unknown; received?: unknown; complaint?: unknown }>;

/**
 * Tells jobs that are in the casebook already by instrument, day and complaint. A school may bring two alike on one day: of
 * jobs that are alike as many are known as there are cases, and the next is new.
 *
 * @returns asked job by job, the id of the case that it is; undefined for a new one
 */
export function knownJobs(cases: Iterable<Case>): (job: Job) => string | undefined {
  const left = new Map<string, string[]>();
  for (const kase of cases) {
    const key = keyOf(kase);
    const ids = left.get(key);
    if (ids) ids.push(kase.id);
    else left.set(key, [kase.id]);
  }
  return (job) => left.get(keyOf(job))?.shift();
}

const keyOf = ({ instrument, received, complaint }: Job) =>
  JSON.stringify([instrument, received, String(complaint).replace(/\s+/g, " ").trim().toLowerCase()]);
