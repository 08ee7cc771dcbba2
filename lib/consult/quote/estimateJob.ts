import type { Case } from "../../casebook/caseFile";
import { estimateMinutes } from "../../estimate/estimateMinutes";
import { minutesCurve, minutesWithin, stretchCurve } from "../../estimate/minutesCurve";
import type { JobMinutes } from "../../estimate/proposePrice";
import type { Bench } from "../bench/bench";
import { jobInView, type RetrievedLike } from "../similarCases";
import { type HarmTail, harmTail } from "./harmTail";
import { type LikeCaseJob, likeJobs } from "./likeJobs";
import { learnStretch, meanMinutes } from "./stretch";

/** How long a job will take: half of such jobs within p50, four in five within p80, nineteen in twenty within p95. */
export type JobEstimate = Readonly<{
  p50: number;
  p80: number;
  p95: number;
  like: readonly LikeCaseJob[];
  /** How many equally alike cases they are worth. */
  effectiveCases: number;
  /** Too few to promise by. */
  thin: boolean;
  /** Past cases whose own estimates taught how far these hold; 0 where too few do. */
  learnedFrom: number;
  minutes: JobMinutes;
  tail: HarmTail;
}>;

/**
 * Estimates a job in hand from the cases like it, stretched so that each figure holds as often as it says, with the tail
 * that the harms of its repairs add.
 *
 * @param found what `likeCases` gives for it
 * @param repairs ids of the repairs in view
 * @returns undefined where no case is like it
 */
export function estimateJob(
  { instrument }: Pick<Case, "instrument">,
  found: readonly RetrievedLike[],
  repairs: readonly string[],
  bench: Bench,
): JobEstimate | undefined {
  const like = likeJobs(found);
  const plain = estimateMinutes(like);
  if (!plain) return undefined;
  const stretch = learnStretch(bench);
  const curve = stretchCurve(minutesCurve(like), stretch.factors);
  const tail = harmTail(repairs, jobInView(instrument, found), like, bench);
  const { harmChance, harmMinutes } = tail;
  return {
    p50: minutesWithin(curve, 0.5),
    p80: minutesWithin(curve, 0.8),
    p95: minutesWithin(curve, 0.95),
    like,
    effectiveCases: plain.effectiveCases,
    thin: plain.thin,
    learnedFrom: stretch.cases,
    minutes: { curve, mean: meanMinutes(like) * stretch.mean, harmChance, harmMinutes },
    tail,
  };
}
