import { jeffreysInterval } from "../../estimate/jeffreysInterval";
import { familyOf } from "../../vocabulary/familyOf";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { LikeJobs } from "../answer";
import type { RepairRecord } from "./repairRecords";

/**
 * Counts how often a repair went wrong in like jobs, and between what bounds that share may lie.
 *
 * @param instrument the instrument on the bench; its family's jobs are the like ones, and where it has none, all are
 * @returns bounds rounded to 4 digits; null where the repair was never done
 * Source: Brown, Cai & DasGupta 2001, section 4 (Jeffreys interval), at .95.
 */
export function countLikeJobs(
  { done, harmed, counts }: RepairRecord,
  vocabulary: Vocabulary,
  instrument: string | undefined,
): LikeJobs | null {
  if (done === 0) return null;
  const family =
    instrument !== undefined && vocabulary.instruments.has(instrument)
      ? familyOf(vocabulary, instrument)
      : undefined;
  const own = counts.filter(
    ({ instrument: other }) => family !== undefined && vocabulary.instrumentTree.isA(other, family),
  );
  const ownDone = own.reduce((sum, count) => sum + count.done, 0);
  const [k, n, among] =
    ownDone > 0
      ? [own.reduce((sum, count) => sum + count.harmed, 0), ownDone, family]
      : [harmed, done, undefined];
  const { low, high } = jeffreysInterval(k, n);
  return {
    done: n,
    harmed: k,
    among: among === undefined ? null : (vocabulary.instruments.get(among)?.label ?? among),
    low: round(low),
    high: round(high),
  };
}

const round = (share: number) => Number(share.toFixed(4));
