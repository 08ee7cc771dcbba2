import type { Bench } from "../consult/bench/bench";
import { type PastEstimate, pastEstimates, stretchOf } from "../consult/quote/stretch";
import { minutesWithin, stretchCurve } from "../estimate/minutesCurve";

/** The share of jobs that were done within what was promised at half, at four in five, and at nineteen in twenty. */
export type Coverage = Readonly<{ p50: number; p80: number; p95: number }>;

/** How the estimates of the casebook's own jobs held, each made as if the job had never happened. */
export type EstimateReport = Coverage &
  Readonly<{
    n: number;
    /** How many times as long as half of such jobs four in five are given, on average. */
    spread: number;
    /** The same without what was learned from the other cases' estimates. */
    plain: Coverage;
  }>;

/**
 * Estimates every finished case from the others, as it stood before its first repair, with the stretch that all the other
 * cases teach, and counts how often the minutes that it took were within.
 *
 * The other cases' own estimates rest on this case too, one among their like cases; leaving it out of those as well would
 * ask n x n times and change next to nothing.
 *
 * Source: leave-one-out cross-validation, Stone 1974; see `learnStretch`.
 */
export function estimateCoverage(bench: Bench): EstimateReport {
  const past = pastEstimates(bench);
  const held = past.map((one, at) => {
    const { factors } = stretchOf(past.filter((_, other) => other !== at));
    return { ...one, curve: stretchCurve(one.curve, factors) };
  });
  const spreads = held.map(({ curve }) => minutesWithin(curve, 0.8) / minutesWithin(curve, 0.5));
  return {
    n: past.length,
    ...coverageOf(held),
    spread: rounded(spreads.reduce((sum, spread) => sum + spread, 0) / (held.length || 1)),
    plain: coverageOf(past),
  };
}

function coverageOf(held: readonly PastEstimate[]): Coverage {
  const within = (share: number) =>
    rounded(
      held.filter(({ minutes, curve }) => minutes <= minutesWithin(curve, share)).length / (held.length || 1),
    );
  return { p50: within(0.5), p80: within(0.8), p95: within(0.95) };
}

const rounded = (value: number) => Number(value.toFixed(4));
