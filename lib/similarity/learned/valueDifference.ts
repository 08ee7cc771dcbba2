import { classPrior } from "./classPrior";
import { type AddDistance, byTable } from "./distance";
import { type EncodedFeature, encodeFeature } from "./encodeFeature";
import { equalFrequencyCuts } from "./equalFrequencyCuts";
import type { Feature, LabelledRows } from "./feature";

/** Rows' worth of the overall shares in every conditional: a value seen in few rows is held to be like the rest. Chosen. */
const smoothingRows = 1;
/** Bins that numbers are cut into: this times the root of the number of rows, 3 to 40. Chosen. */
const binsPerRoot = 1.2;
const mostBins = 40;
/** Bins that the shares of classes are smoothed over, as a share of all bins, and at least. Chosen. */
const smoothedShare = 1 / 14;
const leastSmoothedBins = 0.6;

/**
 * Learns how far values are apart by how differently the classes fall among the rows that have them:
 * d(x, y) = sum over features, sum_c (P(c | x_a) - P(c | y_a))^2, with P(c | v) = (n_vc + m P(c)) / (n_v + m).
 * Unknown is a value like any other: where it tells nothing its shares are those of all rows, and it stands in the middle.
 * Numbers are cut into fine bins whose shares are smoothed over their neighbours.
 *
 * @param rows those to learn from, by number
 * Source: Stanfill & Waltz 1986; numbers as in Wilson & Martinez 1997 (windowed value difference), smoothing chosen.
 */
export function learnValueDifference(data: LabelledRows, rows: Int32Array): AddDistance[] {
  const prior = classPrior(data, rows);
  const binCount = Math.max(3, Math.min(mostBins, Math.round(Math.sqrt(rows.length) * binsPerRoot)));
  return data.features.map((feature) => {
    const encoded = encodeFeature(feature, rows, cutsOf(feature, rows, binCount));
    const shares = conditionalShares(encoded, feature.kind === "numeric", data, rows, prior);
    return byTable(encoded.codes, encoded.width, squaredDifferences(shares, data.classCount), rows);
  });
}

function cutsOf(feature: Feature, rows: Int32Array, binCount: number): number[] {
  return feature.kind === "numeric" ? equalFrequencyCuts(feature.numbers, rows, binCount) : [];
}

/** P(class | code), one row a code. */
function conditionalShares(
  { codes, width }: EncodedFeature,
  isScale: boolean,
  { labels, classCount }: LabelledRows,
  rows: Int32Array,
  prior: Float64Array,
): Float64Array {
  const counted = new Float64Array(width * classCount);
  for (const row of rows) {
    const cell = (codes[row] ?? 0) * classCount + (labels[row] ?? 0);
    counted[cell] = (counted[cell] ?? 0) + 1;
  }
  const counts = isScale ? smoothOverBins(counted, width, classCount) : counted;
  const shares = new Float64Array(width * classCount);
  for (let code = 0; code < width; code++) {
    const own = counts.subarray(code * classCount, (code + 1) * classCount);
    const total = own.reduce((sum, count) => sum + count, 0);
    for (const [label, count] of own.entries()) {
      shares[code * classCount + label] =
        (count + smoothingRows * (prior[label] ?? 0)) / (total + smoothingRows);
    }
  }
  return shares;
}

/** Counts of each bin with those of the bins around, weighted by a normal curve; the unknown, code 0, stay by themselves. */
function smoothOverBins(counts: Float64Array, width: number, classCount: number): Float64Array {
  const reach = Math.max(leastSmoothedBins, (width - 1) * smoothedShare);
  const smoothed = counts.slice();
  for (let bin = 1; bin < width; bin++) {
    for (let other = 1; other < width; other++) {
      if (other === bin) continue;
      const weight = Math.exp(-0.5 * ((other - bin) / reach) ** 2);
      for (let label = 0; label < classCount; label++) {
        const cell = bin * classCount + label;
        smoothed[cell] = (smoothed[cell] ?? 0) + weight * (counts[other * classCount + label] ?? 0);
      }
    }
  }
  return smoothed;
}

/** sum_c (P(c | a) - P(c | b))^2 at [a * width + b]. */
function squaredDifferences(shares: Float64Array, classCount: number): Float64Array {
  const width = shares.length / classCount;
  const differences = new Float64Array(width * width);
  for (let a = 0; a < width; a++) {
    for (let b = 0; b < a; b++) {
      let sum = 0;
      for (let label = 0; label < classCount; label++) {
        sum += ((shares[a * classCount + label] ?? 0) - (shares[b * classCount + label] ?? 0)) ** 2;
      }
      differences[a * width + b] = sum;
      differences[b * width + a] = sum;
    }
  }
  return differences;
}
