import type { Case } from "../casebook/caseFile";
import { harmfulRepairs } from "../casebook/harmfulRepairs";
import { rootCauses } from "../casebook/rootCauses";
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

/**
 * Sorts out what is new: the jobs closed on a day or after it, against all jobs closed before.
 *
 * @param since year-month-day
 */
export function newSince(cases: Iterable<Case>, since: string): News {
  const later: Case[] = [];
  const met = { causes: new Set<string>(), repairs: new Set<string>() };
  const before = { causes: new Set<string>(), repairs: new Set<string>() };
  for (const kase of cases) {
    if (kase.status === "open") continue;
    const isLater = closedOn(kase) >= since;
    if (isLater) later.push(kase);
    const { causes, repairs } = isLater ? met : before;
    for (const cause of rootCauses(kase)) causes.add(cause);
    for (const step of kase.path) if (isRepairStep(step)) repairs.add(step.repair);
  }
  later.sort((a, b) =>
    closedOn(a) === closedOn(b) ? (a.id < b.id ? 1 : -1) : closedOn(a) < closedOn(b) ? 1 : -1,
  );
  return {
    cases: later,
    causes: [...met.causes].filter((id) => !before.causes.has(id)),
    repairs: [...met.repairs].filter((id) => !before.repairs.has(id)),
    harms: later.filter((kase) => harmfulRepairs(kase).length > 0),
  };
}
