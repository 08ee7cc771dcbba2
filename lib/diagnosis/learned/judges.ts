import { type AddDistance, type DistanceTo, sumOf } from "../../similarity/learned/distance";
import type { Feature, LabelledRows } from "../../similarity/learned/feature";
import { informationWeights } from "../../similarity/learned/informationWeights";
import { learnNeighbourWeights } from "../../similarity/learned/neighbourWeights";
import { learnPlainDifference } from "../../similarity/learned/plainDifference";
import { learnValueDifference } from "../../similarity/learned/valueDifference";
import { evidenceWeights } from "./evidenceWeights";
import { neighbourVotes } from "./neighbourVotes";
import { oneDependence } from "./oneDependence";
import type { Judge } from "./opinion";

/** From a vote of the very nearest to one of a wide neighbourhood; which of them counts the pool learns. Chosen. */
const bandwidths = [0.2, 0.5, 1, 2, 4] as const;
/** Weak and strong pull of the weights of evidence toward none; the strong one goes with bins for numbers. Chosen. */
const evidence = [
  { pull: 0.5, bins: 0 },
  { pull: 4, bins: 8 },
] as const;

/** Learns the features' differences from some rows. */
type LearnParts = (data: LabelledRows, rows: Int32Array) => AddDistance[];

/** A distance in which every feature counts as much as its rows' neighbours say. */
const weighedByNeighbours =
  (learnParts: LearnParts) =>
  (data: LabelledRows, rows: Int32Array): DistanceTo => {
    const parts = learnParts(data, rows);
    return sumOf(parts, learnNeighbourWeights(parts, data, rows));
  };

/**
 * The ways of judging that are pooled: votes of like rows, by learned value differences and by plain ones, with equal and
 * with learned weights; likelihoods that know of dependence; weights of evidence learned together. One setting for all
 * data: what suits the data the pool's weights learn.
 *
 * @param features only their kinds are looked at: without numbers two ways of cutting numbers are one
 */
export function judgesFor(features: readonly Feature[]): Judge[] {
  const hasNumbers = features.some(({ kind }) => kind === "numeric");
  return [
    neighbourVotes((data, rows) => sumOf(learnValueDifference(data, rows)), bandwidths),
    neighbourVotes(weighedByNeighbours(learnValueDifference), bandwidths),
    neighbourVotes(weighedByNeighbours(learnPlainDifference), bandwidths),
    neighbourVotes(
      (data, rows) => sumOf(learnPlainDifference(data, rows), informationWeights(data, rows)),
      bandwidths,
    ),
    oneDependence("informative"),
    ...(hasNumbers ? [oneDependence("equal-frequency")] : []),
    ...evidence.map(evidenceWeights),
  ];
}
