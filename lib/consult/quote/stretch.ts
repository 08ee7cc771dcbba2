import type { Case } from "../../casebook/caseFile";
import { isRepairStep } from "../../casebook/step";
import { conformalLevel } from "../../estimate/conformalLevel";
import { curveShares, type LikeJob, type MinutesCurve, minutesCurve } from "../../estimate/minutesCurve";
import type { Bench } from "../bench/bench";
import { likeCases } from "../likeCases";
import { likeJobs } from "./likeJobs";

/** By how much the minutes of like jobs fall short of, or exceed, those of the jobs themselves. */
export type Stretch = Readonly<{
  /** One factor a share of `curveShares`; empty where too few cases teach any. */
  factors: readonly number[];
  /** For the mean. */
  mean: number;
  /** Cases that it was learned from. */
  cases: number;
}>;

/** How one finished case came out beside the cases like it, as they stood before its first repair. */
export type PastEstimate = Readonly<{ case: string; minutes: number; curve: MinutesCurve; mean: number }>;

/** With fewer cases the farthest share of the curve has no level of its own. Source: conformal levels want k <= n. */
const fewestCases = 19;
/** From more cases than this a sample is taken, evenly over the casebook: a level of .8 is then known to within .06. Chosen. */
const mostCases = 200;

/** The factor by which each share's minutes must be multiplied to hold for as many jobs as they say. */
export function stretchOf(past: readonly PastEstimate[]): Stretch {
  const sound = past.filter(({ curve, mean }) => mean > 0 && curve.every((minutes) => minutes > 0));
  if (sound.length < fewestCases) return { factors: [], mean: 1, cases: 0 };
  return {
    factors: curveShares.map((share, at) =>
      conformalLevel(
        sound.map(({ minutes, curve }) => minutes / (curve[at] ?? minutes)),
        share,
      ),
    ),
    mean:
      sound.reduce((sum, { minutes }) => sum + minutes, 0) / sound.reduce((sum, { mean }) => sum + mean, 0),
    cases: sound.length,
  };
}

/**
 * Estimates every finished case, or a sample, from the others as it stood when it would have been quoted: before its first
 * repair.
 *
 * @param most cases at most; default all
 */
export function pastEstimates(bench: Bench, most = Number.POSITIVE_INFINITY): PastEstimate[] {
  const timed = [...bench.cases.values()].filter(({ minutes }) => minutes !== undefined && minutes > 0);
  const step = Math.max(1, timed.length / most);
  const asked = Array.from(
    { length: Math.ceil(timed.length / step) },
    (_, at) => timed[Math.floor(at * step)],
  );
  return asked.flatMap((kase) => {
    const jobs = kase === undefined ? [] : likeJobs(likeCases(beforeRepair(kase), bench));
    if (kase?.minutes === undefined || jobs.length === 0) return [];
    return [{ case: kase.id, minutes: kase.minutes, curve: minutesCurve(jobs), mean: meanMinutes(jobs) }];
  });
}

/** The weighted mean of like jobs' minutes. */
export const meanMinutes = (jobs: readonly LikeJob[]) =>
  jobs.reduce((sum, { minutes, weight }) => sum + minutes * weight, 0) /
  jobs.reduce((sum, { weight }) => sum + weight, 0);

/** What was learned of each casebook, and of how many cases it then was. */
const learned = new WeakMap<Bench["cases"], Readonly<{ size: number; stretch: Stretch }>>();
/** When the casebook has grown or shrunk by more than this part it is learned anew. Chosen. */
const stale = 0.1;

/**
 * What the casebook teaches about its own estimates, leaving each case out in turn: learned at the first question and kept
 * until the casebook has changed by a tenth.
 *
 * Source: Papadopoulos, Proedrou, Vovk & Gammerman 2002 (scores relative to a prediction); leave-one-out as in Barber,
 * Candès, Ramdas & Tibshirani 2021, Predictive inference with the jackknife+.
 */
export function learnStretch(bench: Bench): Stretch {
  const known = learned.get(bench.cases);
  const { size } = bench.cases;
  if (known && Math.abs(size - known.size) <= stale * known.size) return known.stretch;
  const stretch = stretchOf(pastEstimates(bench, mostCases));
  learned.set(bench.cases, { size, stretch });
  return stretch;
}

/** A case as it stood before the first repair was tried: then the customer is told a price. */
function beforeRepair(kase: Case): Case {
  const at = kase.path.findIndex(isRepairStep);
  return at < 0 ? kase : { ...kase, path: kase.path.slice(0, at) };
}
