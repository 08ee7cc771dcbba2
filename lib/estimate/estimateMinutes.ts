import { effectiveSize } from "./effectiveSize";
import { weightedQuantile } from "./weightedQuantile";

/** How long a job like these takes: half of them within p50, four in five within p80, nineteen in twenty within p95. */
export type MinutesEstimate = Readonly<{
  p50: number;
  p80: number;
  p95: number;
  /** How many cases carry weight. */
  cases: number;
  /** How many equally alike cases they are worth; 1 to `cases`. */
  effectiveCases: number;
  /** Too few to promise by: say how few, and quote wide. */
  thin: boolean;
}>;

/** Under five effective cases even the four-in-five figure is the slowest case or close to it. Chosen. */
const enoughCases = 5;

/**
 * Estimates a job's minutes from the cases like it.
 *
 * The figures are quantiles of what was seen: none can be longer than the slowest case, so with fewer than about twenty effective
 * cases p95 is too short to be taken at its word.
 *
 * @param cases minutes (finite, 0 or more) and weight (how like, 0 or more, any scale); those without weight do not count
 * @returns the estimate, minutes ascending from p50 to p95; undefined when no case carries weight
 * @throws RangeError when a case's minutes or weight are out of range
 * @example estimateMinutes([{ minutes: 30, weight: 1 }])?.thin // true
 * Source: see `weightedQuantile` and `effectiveSize`.
 */
export function estimateMinutes(
  cases: readonly Readonly<{ minutes: number; weight: number }>[],
): MinutesEstimate | undefined {
  for (const { minutes, weight } of cases)
    if (!(Number.isFinite(minutes) && minutes >= 0 && Number.isFinite(weight) && weight >= 0))
      throw new RangeError(
        `a case must have minutes and a weight of 0 or more; got ${minutes} min with ${weight}; mend the case`,
      );
  const counted = cases.filter(({ weight }) => weight > 0);
  if (counted.length === 0) return undefined;
  const minutes = counted.map((one) => one.minutes);
  const weights = counted.map((one) => one.weight);
  const effectiveCases = effectiveSize(weights);
  return {
    p50: weightedQuantile(minutes, weights, 0.5),
    p80: weightedQuantile(minutes, weights, 0.8),
    p95: weightedQuantile(minutes, weights, 0.95),
    cases: counted.length,
    effectiveCases,
    thin: effectiveCases < enoughCases,
  };
}
