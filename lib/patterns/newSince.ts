import type { Case } from "../casebook/caseFile";
import { harmfulRepairs } from "../casebook/harmfulRepairs";
import { isRepairStep } from "../casebook/step";

/** What finished jobs brought since a day that no job before had. */
export type News = Readonly<{
  /** Finished since, the last first; ties by id, the greater first. */
  cases: readonly Case[];
  /** Root causes met for the first time. */
  causes: readonly string[];
  /** Repairs done for the first time. */
  repairs: readonly string[];
  /** Finished since, and a repair did harm in them. */
  harms: readonly Case[];
}>;

const closedOn = ({ closed, received }: Case) => closed ?? received;
const rootsOf = ({ causes }: Case) => causes.filter(({ role }) => role === "root").map(({ cause }) => cause);
const repairsOf = ({ path }: Case) => path.filter(isRepairStep).map(({ repair }) => repair);

/**
 * Sorts out what is new: the jobs closed on a day or after it, against all jobs closed before.
 *
 * @param since year-month-day
 */
export function newSince(cases: readonly Case[], since: string): News {
  const finished = cases.filter(({ status }) => status === "closed");
  const later = finished
    .filter((kase) => closedOn(kase) >= since)
    .sort((a, b) =>
      closedOn(a) === closedOn(b) ? (a.id < b.id ? 1 : -1) : closedOn(a) < closedOn(b) ? 1 : -1,
    );
  const earlier = finished.filter((kase) => closedOn(kase) < since);
  const first = (of: (kase: Case) => readonly string[]) => {
    const known = new Set(earlier.flatMap(of));
    return [...new Set(later.flatMap(of))].filter((id) => !known.has(id));
  };
  return {
    cases: later,
    causes: first(rootsOf),
    repairs: first(repairsOf),
    harms: later.filter((kase) => harmfulRepairs(kase).length > 0),
  };
}
