import type { Case } from "../../casebook/caseFile";
import { repairsDone } from "../../casebook/repairsDone";
import { jeffreysInterval } from "../../estimate/jeffreysInterval";
import { familyOf } from "../../vocabulary/familyOf";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { LikeJobs } from "../answer";
import type { RepairRecord } from "./repairRecords";

/** The job that a repair is looked at for: its instrument, where that is known, and the finished cases that are like it. */
export type JobInView = Readonly<{ instrument: string | undefined; like: readonly Case[] }>;

/** Of fewer jobs all may go well though every second goes wrong: .5 to the 5th is under 1 in 20, to the 4th it is not. */
const fewestJobs = 5;

type Count = Readonly<{ done: number; harmed: number }>;

/**
 * Counts how often a repair went wrong in jobs like the one in view, and between what bounds that share may lie.
 *
 * Counted are the cases like it; where the repair was done in fewer than five of them, the jobs on its instrument's family;
 * where in fewer than five of those, all. A narrower count that holds all jobs there are is kept, however few they are.
 *
 * @param repair its id, and what is recorded of it
 * @returns bounds rounded to 4 digits; null where the repair was never done
 * Source: Brown, Cai & DasGupta 2001, section 4 (Jeffreys interval), at .95.
 */
export function countLikeJobs(
  repair: Readonly<{ id: string; record: RepairRecord }>,
  vocabulary: Vocabulary,
  { instrument, like }: JobInView,
): LikeJobs | null {
  const { id, record } = repair;
  if (record.done === 0) return null;
  const holds = ({ done }: Count) => done >= fewestJobs || done === record.done;
  const likeOnes = countOf(
    like.flatMap((kase) => {
      const didHarm = repairsDone(kase).get(id);
      return didHarm === undefined ? [] : [{ done: 1, harmed: Number(didHarm) }];
    }),
  );
  if (holds(likeOnes)) return withBounds(likeOnes, "like", null);
  const family =
    instrument !== undefined && vocabulary.instruments.has(instrument)
      ? familyOf(vocabulary, instrument)
      : undefined;
  if (family !== undefined) {
    const kin = countOf(
      record.counts.filter(({ instrument: other }) => vocabulary.instrumentTree.isA(other, family)),
    );
    if (holds(kin)) return withBounds(kin, "family", vocabulary.instruments.get(family)?.label ?? family);
  }
  return withBounds(record, "all", null);
}

const countOf = (counts: readonly Count[]): Count => ({
  done: counts.reduce((sum, { done }) => sum + done, 0),
  harmed: counts.reduce((sum, { harmed }) => sum + harmed, 0),
});

function withBounds({ done, harmed }: Count, among: LikeJobs["among"], family: string | null): LikeJobs {
  const { low, high } = jeffreysInterval(harmed, done);
  return { done, harmed, among, family, low: round(low), high: round(high) };
}

const round = (share: number) => Number(share.toFixed(4));
