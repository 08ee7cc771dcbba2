import type { Bench } from "../bench/bench";
import type { JobInView } from "../repairs/countLikeJobs";
import { warnOfRepair } from "../sheet/warnOfRepair";
import type { LikeCaseJob } from "./likeJobs";

/** How often a repair did harm, and what it then cost. */
export type RepairTail = Readonly<{
  repair: string;
  label: string;
  /** How often in jobs like this one, in words; see `harmWords`. */
  odds: string;
  /** The chance reckoned with, by all jobs in which it was done, and the minutes to make good, on average, that the shop then bears. */
  chance: number;
  shopMinutes: number;
}>;

/** What going wrong may add to a job beyond what its like cases hold already. */
export type HarmTail = Readonly<{
  repairs: readonly RepairTail[];
  harmChance: number;
  harmMinutes: number;
}>;

/** A repair's own record is drawn toward all repairs' by as many imagined jobs. Chosen. */
const imagined = 5;

/**
 * The tail that recorded harms add to a job's minutes.
 *
 * Of one repair: chance = (harmed + m r) / (done + m), r the rate of all repairs together, m = 5; of several, that any of
 * them does harm. What the like cases had of harm is in their minutes already and is taken off.
 *
 * @param repairs ids of the repairs in view; unknown ones are passed over
 */
export function harmTail(
  repairs: readonly string[],
  job: JobInView,
  like: readonly LikeCaseJob[],
  bench: Bench,
): HarmTail {
  const all = [...bench.repairs.values()];
  const everDone = all.reduce((sum, { done }) => sum + done, 0);
  const everHarmed = all.reduce((sum, { harmed }) => sum + harmed, 0);
  const rate = everDone > 0 ? everHarmed / everDone : 0;
  const rows = [...new Set(repairs)].flatMap((id): RepairTail[] => {
    const warning = warnOfRepair(bench, id, job);
    if (!warning) return [];
    const { label, odds, done, harmed } = warning;
    return [
      {
        repair: id,
        label,
        odds,
        chance: done === 0 ? rate : (harmed + imagined * rate) / (done + imagined),
        shopMinutes: shopMinutesOf(id, bench) ?? shopMinutesOf(undefined, bench) ?? 0,
      },
    ];
  });
  const any = 1 - rows.reduce((well, { chance }) => well * (1 - chance), 1);
  const weight = like.reduce((sum, one) => sum + one.weight, 0);
  const held = like.reduce((sum, one) => sum + (one.case.harms.length > 0 ? one.weight : 0), 0);
  const chances = rows.reduce((sum, { chance }) => sum + chance, 0);
  return {
    repairs: rows,
    harmChance: Math.max(0, any - (weight > 0 ? held / weight : 0)),
    harmMinutes:
      chances > 0
        ? rows.reduce((sum, { chance, shopMinutes }) => sum + chance * shopMinutes, 0) / chances
        : 0,
  };
}

/** The minutes that a harm of one repair, or of any, has cost the shop on average; undefined where there was none. */
function shopMinutesOf(repair: string | undefined, { repairs, cases }: Bench): number | undefined {
  const records = repair === undefined ? [...repairs.values()] : [repairs.get(repair)];
  const ids = new Set(records.flatMap((record) => record?.harms.map((harm) => harm.case) ?? []));
  const harms = [...ids]
    .flatMap((id) => cases.get(id)?.harms ?? [])
    .filter((harm) => repair === undefined || harm.repair === repair);
  if (harms.length === 0) return undefined;
  return (
    harms.reduce((sum, { minutes, paidBy }) => sum + (paidBy === "shop" ? minutes : 0), 0) / harms.length
  );
}
