import { classPrior } from "./classPrior";
import type { AddDistance } from "./distance";
import type { LabelledRows } from "./feature";
import { minimise } from "./minimise";

/** Rows whose class is to be foretold by their neighbours, and the neighbours, at most. Chosen: more hardly changed the weights. */
const mostAsked = 250;
const mostNeighbours = 600;
/** Differences kept at most, row by row and feature by feature. Chosen: six megabytes. */
const mostDifferences = 8e6;
/** Pull of the weights' logarithms toward equal ones. Chosen: see tests/reference/data/README.md. */
const equalPull = 3;
/** Say of the prior, in votes of the nearest row, as in the vote itself. */
const priorVotes = 0.3;
/** Neighbour at which a vote has fallen to 1/e at the start. */
const startNeighbour = 8;
/** A slope under this moves no weight that shows. */
const leastSlope = 1e-6;
const search = { mostSteps: 10, tolerance: 1e-3 } as const;

/**
 * Learns how much each feature's difference should count, so that rows are foretold best by the votes of the others,
 * exp(-sum_a w_a d_a) each. The logarithms of the weights are pulled toward their common value: a small casebook leaves them
 * all but equal.
 *
 * @param parts the features' differences, over the same rows
 * @param rows those the parts were learned from
 * @returns by feature, each over 0, with a mean of 1
 * Source: Goldberger et al. 2005 (neighbourhood components), with a diagonal matrix; leave-one-out.
 */
export function learnNeighbourWeights(
  parts: readonly AddDistance[],
  data: LabelledRows,
  rows: Int32Array,
): Float64Array {
  const stride = Math.max(1, Math.ceil(rows.length / mostNeighbours));
  const neighbours = [...rows.keys()].filter((at) => at % stride === 0);
  const room = Math.floor(mostDifferences / Math.max(1, neighbours.length * parts.length));
  const askedCount = Math.min(mostAsked, room, neighbours.length);
  if (askedCount < 10 || parts.length < 2) return new Float64Array(parts.length).fill(1);
  const asked = Array.from({ length: askedCount }, (_, at) =>
    Math.floor(((at + 0.5) * neighbours.length) / askedCount),
  );
  const differences = gather(parts, rows, neighbours, asked);
  const labels = Int32Array.from(neighbours, (at) => data.labels[rows[at] ?? 0] ?? 0);
  const prior = classPrior(data, rows).map((share) => share * priorVotes);
  const count = neighbours.length;
  const start = new Float64Array(parts.length + 1);
  start[parts.length] = -Math.log(typicalGap(differences, parts.length, count, asked));
  const distances = new Float64Array(count);
  const voters = new Int32Array(count);
  const point = minimise(
    (logs, gradient) => {
      gradient.fill(0);
      let loss = 0;
      const common = logs[parts.length] ?? 0;
      const weights = Float64Array.from(parts, (_, at) => Math.exp((logs[at] ?? 0) + common));
      for (const [place, own] of asked.entries()) {
        const from = place * parts.length * count;
        distances.fill(0);
        for (let at = 0; at < parts.length; at++) {
          const weight = weights[at] ?? 0;
          const first = from + at * count;
          for (let row = 0; row < count; row++) {
            distances[row] = (distances[row] ?? 0) + weight * (differences[first + row] ?? 0);
          }
        }
        loss += turnIntoSlopes(distances, labels, own, prior);
        let voterCount = 0;
        for (let row = 0; row < count; row++) {
          if (Math.abs(distances[row] ?? 0) > leastSlope) voters[voterCount++] = row;
        }
        for (let at = 0; at < parts.length; at++) {
          const first = from + at * count;
          let slope = 0;
          for (let voter = 0; voter < voterCount; voter++) {
            const row = voters[voter] ?? 0;
            slope += (distances[row] ?? 0) * (differences[first + row] ?? 0);
          }
          gradient[at] = (gradient[at] ?? 0) + slope * (weights[at] ?? 0);
        }
      }
      let all = 0;
      for (let at = 0; at < parts.length; at++) {
        const slope = gradient[at] ?? 0;
        all += slope;
        const log = logs[at] ?? 0;
        loss += 0.5 * equalPull * log * log;
        gradient[at] = slope + equalPull * log;
      }
      gradient[parts.length] = all;
      return loss;
    },
    start,
    search,
  );
  const raw = Float64Array.from(parts, (_, at) => Math.exp(point[at] ?? 0));
  const mean = raw.reduce((sum, weight) => sum + weight, 0) / raw.length;
  return raw.map((weight) => weight / mean);
}

/** Differences at [(asked * features + feature) * neighbours + neighbour]. */
function gather(
  parts: readonly AddDistance[],
  rows: Int32Array,
  neighbours: readonly number[],
  asked: readonly number[],
): Float32Array {
  const all = new Float32Array(asked.length * parts.length * neighbours.length);
  const buffer = new Float64Array(rows.length);
  let to = 0;
  for (const own of asked) {
    for (const add of parts) {
      buffer.fill(0);
      add(rows[neighbours[own] ?? 0] ?? 0, buffer);
      for (const at of neighbours) {
        all[to] = buffer[at] ?? 0;
        to += 1;
      }
    }
  }
  return all;
}

/** How much farther the 8th neighbour is than the nearest, on average, at equal weights; over 0. */
function typicalGap(
  differences: Float32Array,
  features: number,
  count: number,
  asked: readonly number[],
): number {
  let sum = 0;
  for (const [place, own] of asked.entries()) {
    const distances = new Float64Array(count);
    for (let at = 0; at < features; at++) {
      const first = (place * features + at) * count;
      for (let row = 0; row < count; row++) {
        distances[row] = (distances[row] ?? 0) + (differences[first + row] ?? 0);
      }
    }
    distances[own] = Number.POSITIVE_INFINITY;
    distances.sort();
    sum += (distances[Math.min(startNeighbour, count - 1) - 1] ?? 0) - (distances[0] ?? 0);
  }
  const gap = sum / asked.length;
  return Number.isFinite(gap) && gap > 1e-6 ? gap : 1;
}

/**
 * The loss of one row in nats, and in the place of the distances the loss's slopes by them.
 * The prior's votes are those of the nearest row, so that they fall with it.
 */
function turnIntoSlopes(
  distances: Float64Array,
  labels: Int32Array,
  own: number,
  prior: Float64Array,
): number {
  let nearest = own === 0 ? 1 : 0;
  for (let row = 0; row < distances.length; row++) {
    if (row !== own && (distances[row] ?? 0) < (distances[nearest] ?? 0)) nearest = row;
  }
  const least = distances[nearest] ?? 0;
  const truth = labels[own] ?? 0;
  let same = prior[truth] ?? 0;
  let total = priorVotes;
  for (let row = 0; row < distances.length; row++) {
    const vote = row === own ? 0 : Math.exp(least - (distances[row] ?? 0));
    distances[row] = vote;
    total += vote;
    if (labels[row] === truth) same += vote;
  }
  const priorSlope = (prior[truth] ?? 0) / same - priorVotes / total;
  for (let row = 0; row < distances.length; row++) {
    const vote = distances[row] ?? 0;
    distances[row] = (labels[row] === truth ? vote / same : 0) - vote / total;
  }
  distances[nearest] = (distances[nearest] ?? 0) + priorSlope;
  return Math.log(total) - Math.log(same);
}
