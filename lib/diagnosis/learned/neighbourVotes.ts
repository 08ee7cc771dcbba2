import { classPrior } from "../../similarity/learned/classPrior";
import type { DistanceTo } from "../../similarity/learned/distance";
import type { LabelledRows } from "../../similarity/learned/feature";
import type { Judge, Opinions } from "./opinion";

/** Say of the prior, in votes of the nearest row: a lone neighbour does not decide. Chosen. */
const priorVotes = 0.3;
/** The neighbour whose distance beyond the nearest one's sets the scale of the bandwidths. Chosen. */
const scaleNeighbour = 8;
/** Rows over which that scale is averaged at most. Chosen. */
const scaleRows = 50;
/** A vote under exp(-30) is none. */
const mostBandwidths = 30;

/**
 * Lets the rows vote by how near they are: each has exp(-(d - d_nearest) / h) votes, the prior has some too. One opinion a
 * bandwidth h, given as a multiple of how much farther the 8th neighbour is than the nearest one, on average over the rows.
 *
 * @param learnDistance learns the distance from some rows
 * @param bandwidths each over 0
 * Source: distance-weighted nearest neighbours, Dudani 1976; kernel bandwidths, Nadaraya 1964, Watson 1964.
 */
export function neighbourVotes(
  learnDistance: (data: LabelledRows, rows: Int32Array) => DistanceTo,
  bandwidths: readonly number[],
): Judge {
  return { learn: (data) => (rows) => judge(data, rows, learnDistance(data, rows), bandwidths) };
}

function judge(
  data: LabelledRows,
  rows: Int32Array,
  distanceTo: DistanceTo,
  bandwidths: readonly number[],
): Opinions {
  const labels = Int32Array.from(rows, (row) => data.labels[row] ?? 0);
  const prior = classPrior(data, rows).map((share) => priorVotes * share);
  const distances = new Float64Array(rows.length);
  const scale = typicalGap(distanceTo, rows);
  return (row) => {
    distanceTo(row, distances);
    let nearest = Number.POSITIVE_INFINITY;
    for (const distance of distances) if (distance < nearest) nearest = distance;
    return bandwidths.map((bandwidth) => {
      const tally = prior.slice();
      const width = bandwidth * scale;
      const farthest = nearest + mostBandwidths * width;
      for (let at = 0; at < distances.length; at++) {
        const distance = distances[at] ?? 0;
        if (distance > farthest) continue;
        const label = labels[at] ?? 0;
        tally[label] = (tally[label] ?? 0) + Math.exp((nearest - distance) / width);
      }
      const total = tally.reduce((sum, votes) => sum + votes, 0);
      return tally.map((votes) => Math.log(votes / total));
    });
  };
}

/** How much farther the 8th neighbour of a row is than its nearest, on average; over 0. */
function typicalGap(distanceTo: DistanceTo, rows: Int32Array): number {
  const distances = new Float64Array(rows.length);
  const step = Math.max(1, Math.floor(rows.length / scaleRows));
  let gaps = 0;
  let spreads = 0;
  let count = 0;
  for (let at = 0; at < rows.length; at += step) {
    distanceTo(rows[at] ?? 0, distances);
    distances[at] = Number.POSITIVE_INFINITY;
    const nearest = new Float64Array(Math.min(scaleNeighbour, rows.length - 1)).fill(
      Number.POSITIVE_INFINITY,
    );
    let farthest = 0;
    for (let other = 0; other < distances.length; other++) {
      const distance = distances[other] ?? 0;
      if (distance > farthest && other !== at) farthest = distance;
      // An insertion sort of the few nearest.
      let place = nearest.length - 1;
      if (place < 0 || distance >= (nearest[place] ?? 0)) continue;
      for (; place > 0 && (nearest[place - 1] ?? 0) > distance; place--)
        nearest[place] = nearest[place - 1] ?? 0;
      nearest[place] = distance;
    }
    gaps += (nearest.at(-1) ?? 0) - (nearest[0] ?? 0);
    spreads += farthest;
    count += 1;
  }
  // Where most rows are alike to the last value the gap says nothing: a hundredth of the widest distance then does.
  const scale = Math.max(gaps, spreads / 100) / Math.max(1, count);
  return Number.isFinite(scale) && scale > 0 ? scale : 1;
}
