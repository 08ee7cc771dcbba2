import { jeffreysInterval } from "../../estimate/jeffreysInterval";
import type { Warning } from "../answer";
import type { Bench } from "../bench/bench";
import type { LikeCaseJob } from "../quote/likeJobs";
import type { RecordedHarm } from "../repairs/repairRecords";
import { repairResults } from "../repairs/repairResults";
import { warnOfRepair } from "./warnOfRepair";

/** What to know before a repair is done on a job: beside the warning, what it did in the cases like this one. */
export type RepairOutlook = Readonly<{
  warning: Warning;
  /** Like cases in which it was done, and those in which it did harm. */
  likeDone: number;
  likeHarmed: number;
  /** Where the rate over all cases lies in the long run, nineteen times in twenty; undefined where it was never done. */
  interval: Readonly<{ low: number; high: number }> | undefined;
  /** What it did: those of like cases first, then the newest. */
  harms: readonly RecordedHarm[];
  /** Once it is begun it cannot be undone. */
  noWayBack: boolean;
}>;

/** Risk class of what cannot be undone. */
const noReturn = 4;
const mostHarms = 3;

/**
 * Looks ahead at a repair before it is done.
 *
 * @returns undefined where the handbook knows no such repair
 */
export function outlookOfRepair(
  id: string,
  like: readonly LikeCaseJob[],
  bench: Pick<Bench, "vocabulary" | "repairs">,
): RepairOutlook | undefined {
  const warning = warnOfRepair(bench, id);
  if (!warning) return undefined;
  const results = like.map(({ case: kase }) => repairResults(kase, id));
  const done = results.filter(({ last, didHarm }) => last !== undefined || didHarm);
  const isLike = new Set(like.map(({ case: kase }) => kase.id));
  const harms = [...(bench.repairs.get(id)?.harms ?? [])].sort(
    (a, b) =>
      Number(isLike.has(b.case)) - Number(isLike.has(a.case)) ||
      (a.received === b.received ? (a.case < b.case ? 1 : -1) : a.received < b.received ? 1 : -1),
  );
  return {
    warning,
    likeDone: done.length,
    likeHarmed: done.filter(({ didHarm }) => didHarm).length,
    interval: warning.done > 0 ? jeffreysInterval(warning.harmed, warning.done) : undefined,
    harms: harms.slice(0, mostHarms),
    noWayBack: warning.riskClass >= noReturn,
  };
}
