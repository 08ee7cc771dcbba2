import { weightedQuantile } from "./weightedQuantile";

/** Shares of jobs at which a curve says how long they take. The last is the farthest that is promised by. */
export const curveShares: readonly number[] = Array.from({ length: 19 }, (_, at) => (at + 1) / 20);

/** Minutes within which each share of `curveShares` of the jobs is done, ascending. */
export type MinutesCurve = readonly number[];

/** A like job: its minutes, and how like it is (0 or more, any scale). */
export type LikeJob = Readonly<{ minutes: number; weight: number }>;

/**
 * The minutes of like jobs as a curve over the shares of jobs.
 *
 * @param jobs at least one with weight
 * @throws RangeError as `weightedQuantile`
 * @example minutesCurve([{ minutes: 30, weight: 1 }])[0] // 30
 */
export function minutesCurve(jobs: readonly LikeJob[]): MinutesCurve {
  const minutes = jobs.map((one) => one.minutes);
  const weights = jobs.map(({ weight }) => weight);
  // Rounding may let neighbouring quantiles fall by a hair: kept level, as a stretched curve is.
  return stretchCurve(
    curveShares.map((share) => weightedQuantile(minutes, weights, share)),
    [],
  );
}

/**
 * Multiplies each share's minutes by its factor; where the curve would fall it is kept level.
 *
 * @param factors above 0, one a share of `curveShares`; a missing one is 1
 * @example stretchCurve([10, 20], [3, 1]) // [30, 30]
 */
export function stretchCurve(curve: MinutesCurve, factors: readonly number[]): MinutesCurve {
  let longest = 0;
  return curve.map((minutes, at) => {
    longest = Math.max(longest, minutes * (factors[at] ?? 1));
    return longest;
  });
}

/**
 * The minutes within which a share of the jobs is done, by straight lines between the shares of the curve.
 *
 * @param share in .05...95; beyond, the nearest end is given
 */
export function minutesWithin(curve: MinutesCurve, share: number): number {
  const at = curveShares.findIndex((one) => one >= share - 1e-9);
  if (at < 0) return curve.at(-1) ?? 0;
  const [low, high] = [curve[Math.max(0, at - 1)] ?? 0, curve[at] ?? 0];
  const [from, to] = [curveShares[at - 1] ?? share, curveShares[at] ?? share];
  return to > from ? low + ((high - low) * (share - from)) / (to - from) : high;
}

/**
 * The chance that a job takes longer than so many minutes: 1 less the share that is done within them. What goes beyond the
 * curve's end is one in twenty, however far: nobody knows how far it reaches.
 *
 * @param minutes 0 or more
 * @returns .05...1, falling in the minutes
 * @example chanceOver(minutesCurve([{ minutes: 30, weight: 1 }]), 15) // 0.975
 */
export function chanceOver(curve: MinutesCurve, minutes: number): number {
  const at = curve.findIndex((one) => one > minutes);
  if (at < 0) return 1 - (curveShares.at(-1) ?? 0);
  const [low, high] = [curve[at - 1] ?? 0, curve[at] ?? 0];
  const [from, to] = [curveShares[at - 1] ?? 0, curveShares[at] ?? 0];
  return 1 - (from + ((to - from) * (minutes - low)) / (high - low));
}
