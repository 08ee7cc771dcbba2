import { appliesTo } from "../../vocabulary/appliesTo";
import type { LikelyCause, Warning } from "../answer";
import type { Bench } from "../bench/bench";
import { warnOfRepair } from "../sheet/warnOfRepair";
import type { JobInView } from "./countLikeJobs";

/** A cause below this chance puts no repair in view; a repair below this class does no lasting harm by itself. Chosen. */
const inView = 0.08;
const forcefulClass = 3;

/**
 * Lists the repairs that the likely causes put in view and that can do harm: how often and how they went wrong in jobs like
 * this one, and what to look at first.
 *
 * @returns all of them, the riskiest of the likeliest first, ties by id
 */
export function listWarnings(
  bench: Pick<Bench, "vocabulary" | "repairs">,
  causes: readonly LikelyCause[],
  job: JobInView,
): Warning[] {
  const chance = new Map<string, number>();
  for (const { id, probability } of causes) {
    if (probability < inView) continue;
    for (const repair of bench.vocabulary.causes.get(id)?.repairs ?? []) {
      chance.set(repair, (chance.get(repair) ?? 0) + probability);
    }
  }
  return [...chance]
    .flatMap(([id, likely]) => {
      if (!appliesTo(bench.vocabulary, bench.vocabulary.repairs.get(id)?.families ?? [], job.instrument))
        return [];
      const warning = warnOfRepair(bench, id, job);
      if (!warning || (warning.riskClass < forcefulClass && warning.harmed === 0)) return [];
      return [{ warning, worth: likely * (1 + warning.riskClass) }];
    })
    .sort((a, b) => b.worth - a.worth || (a.warning.repair < b.warning.repair ? -1 : 1))
    .map(({ warning }) => warning);
}
