import type { Case } from "./caseFile";
import { harmfulRepairs } from "./harmfulRepairs";
import { isRepairStep } from "./step";

/**
 * Tells the repairs that were done in a case, each once, and whether each did harm: a step is that repair, or the case lists
 * its harm.
 */
export function repairsDone(kase: Pick<Case, "path" | "harms">): ReadonlyMap<string, boolean> {
  const harmful = new Set(harmfulRepairs(kase));
  const tried = kase.path.filter(isRepairStep).map(({ repair }) => repair);
  return new Map([...tried, ...harmful].map((id) => [id, harmful.has(id)]));
}
