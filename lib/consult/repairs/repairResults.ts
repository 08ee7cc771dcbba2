import type { Case } from "../../casebook/caseFile";
import { harmfulRepairs } from "../../casebook/harmfulRepairs";
import { isRepairStep, type RepairStep } from "../../casebook/step";

/** How a repair went in one case: its result when it was last done, and whether it did harm at any time. */
export type RepairResults = Readonly<{ last: RepairStep["result"] | undefined; didHarm: boolean }>;

/** Looks up how a repair went in a case; harm is what a step says or what the case lists as harm of this repair. */
export function repairResults({ path, harms }: Pick<Case, "path" | "harms">, repair: string): RepairResults {
  const results = path.filter(isRepairStep).flatMap((step) => (step.repair === repair ? step.result : []));
  return {
    last: results.at(-1),
    didHarm: harmfulRepairs({ path, harms }).includes(repair),
  };
}
