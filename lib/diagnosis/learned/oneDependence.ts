import { classPrior } from "../../similarity/learned/classPrior";
import type { EncodedFeature } from "../../similarity/learned/encodeFeature";
import type { LabelledRows } from "../../similarity/learned/feature";
import { unknownTells } from "../../similarity/learned/unknownTells";
import { type Cutting, cutAll, encodeAll } from "./codedRows";
import { normaliseLogs } from "./logSumExp";
import { naiveEvidence } from "./naiveEvidence";
import type { Judge, Opinions } from "./opinion";

/** Say of P(v_j | c) in P(v_j | c, v_i), in rows. Chosen. */
const smoothingRows = 2;
/** Cells of the table of pairs at most; beyond it the features with fewest values come first. Chosen: six megabytes, which stay near the processor. */
const mostCells = 1.5e6;

/**
 * Weighs the classes with every feature in turn as the one that all others may depend on, and averages: sum over i of
 * P(c) P(v_i | c) product over j of P(v_j | c, v_i). So findings that go together are not counted twice in full.
 *
 * @param cutting how numbers are cut
 * Source: averaged one-dependence estimators, Webb, Boughton & Wang 2005.
 */
export function oneDependence(cutting: Cutting): Judge {
  const naive = naiveEvidence(cutting);
  return {
    learn: (data, settled) => {
      const cuts = cutAll(data, settled, cutting);
      const fallback = naive.learn(data, settled);
      return (rows) => {
        const pairs = countPairs(data, rows, encodeAll(data.features, rows, cuts));
        return judgeByPairs(pairs, fallback(rows));
      };
    },
  };
}

/** Everything counted, as logarithms; a cell is a value of a feature. */
type Pairs = Readonly<{
  classCount: number;
  cellCount: number;
  /** Cell of each feature's value in a row, -1 where unknown says nothing. */
  cellsOf: (row: number) => Int32Array;
  /** log P(c) P(v | c) at [cell * classCount + c]. */
  parentLogs: Float64Array;
  /** log P(v_j | c, v_i) at [(cell_i * cellCount + cell_j) * classCount + c]. */
  childLogs: Float32Array;
  /** Rows that have the value, by cell. */
  seen: Float64Array;
}>;

/** Features that fit into the table of pairs, those with few values first. */
function chooseFeatures(
  encoded: readonly EncodedFeature[],
  classCount: number,
  tells: (feature: EncodedFeature) => boolean,
): EncodedFeature[] {
  const chosen: EncodedFeature[] = [];
  let cells = 0;
  for (const feature of [...encoded].sort((a, b) => a.width - b.width)) {
    if ((cells + feature.width) ** 2 * classCount > mostCells) break;
    // A feature with one value tells something only where it is unknown.
    if (feature.width <= 2 && !tells(feature)) continue;
    chosen.push(feature);
    cells += feature.width;
  }
  return chosen;
}

function countPairs(data: LabelledRows, rows: Int32Array, encoded: readonly EncodedFeature[]): Pairs {
  const { labels, classCount } = data;
  const tells = ({ codes }: EncodedFeature) => unknownTells(codes, data, rows);
  const features = chooseFeatures(encoded, classCount, tells);
  const skips = features.map((feature) => !tells(feature));
  const offsets: number[] = [];
  let cellCount = 0;
  for (const { width } of features) {
    offsets.push(cellCount);
    cellCount += width;
  }
  const cellsOf = (row: number) =>
    Int32Array.from(features, ({ codes }, at) => {
      const code = codes[row] ?? 0;
      return code === 0 && skips[at] ? -1 : (offsets[at] ?? 0) + code;
    });
  const counts = new Float32Array(cellCount * cellCount * classCount);
  const seen = new Float64Array(cellCount);
  for (const row of rows) {
    const cells = cellsOf(row);
    const label = labels[row] ?? 0;
    for (const one of cells) {
      if (one < 0) continue;
      seen[one] = (seen[one] ?? 0) + 1;
      for (const other of cells) {
        if (other < 0) continue;
        const at = (one * cellCount + other) * classCount + label;
        counts[at] = (counts[at] ?? 0) + 1;
      }
    }
  }
  const prior = classPrior(data, rows);
  return {
    classCount,
    cellCount,
    cellsOf,
    seen,
    ...logsOf(counts, seen, features, offsets, prior, cellCount),
  };
}

/** Smooths the counts and takes their logarithms, in the place of the counts. */
function logsOf(
  counts: Float32Array,
  seen: Float64Array,
  features: readonly EncodedFeature[],
  offsets: readonly number[],
  prior: Float64Array,
  cellCount: number,
): Pick<Pairs, "parentLogs" | "childLogs"> {
  const classCount = prior.length;
  const likelihoods = new Float64Array(cellCount * classCount);
  for (const [at, { width }] of features.entries()) {
    const first = offsets[at] ?? 0;
    let total = 0;
    for (let cell = first; cell < first + width; cell++) total += (seen[cell] ?? 0) + 0.5;
    for (let label = 0; label < classCount; label++) {
      let known = 0;
      const own = (cell: number) => counts[(cell * cellCount + cell) * classCount + label] ?? 0;
      for (let cell = first; cell < first + width; cell++) known += own(cell);
      for (let cell = first; cell < first + width; cell++) {
        const share = ((seen[cell] ?? 0) + 0.5) / total;
        likelihoods[cell * classCount + label] = (own(cell) + width * share) / (known + width);
      }
    }
  }
  const parentLogs = likelihoods.map((p, at) => Math.log(p * (prior[at % classCount] ?? 1)));
  // Most pairs were never seen: their logarithms are sums of few, and only the others are worked out one by one.
  const unseenLogs = likelihoods.map((p) => Math.log(smoothingRows * p));
  for (let parent = 0; parent < cellCount; parent++) {
    if (seen[parent] === 0) continue;
    for (const [at, { width }] of features.entries()) {
      const first = offsets[at] ?? 0;
      for (let label = 0; label < classCount; label++) {
        const from = (parent * cellCount + first) * classCount + label;
        const to = from + width * classCount;
        let known = smoothingRows;
        for (let cell = from; cell < to; cell += classCount) known += counts[cell] ?? 0;
        const knownLog = Math.log(known);
        let child = first * classCount + label;
        for (let cell = from; cell < to; cell += classCount) {
          const count = counts[cell] ?? 0;
          const smoothed =
            count === 0
              ? (unseenLogs[child] ?? 0)
              : Math.log(count + smoothingRows * (likelihoods[child] ?? 1));
          counts[cell] = smoothed - knownLog;
          child += classCount;
        }
      }
    }
  }
  return { parentLogs, childLogs: counts };
}

function judgeByPairs(pairs: Pairs, fallback: Opinions): Opinions {
  const { classCount, cellCount, cellsOf, parentLogs, childLogs, seen } = pairs;
  return (row) => {
    const cells = cellsOf(row).filter((cell) => cell >= 0);
    const parents = cells.filter((cell) => (seen[cell] ?? 0) > 0);
    if (parents.length === 0) return fallback(row);
    const logs = new Float64Array(parents.length * classCount);
    let top = Number.NEGATIVE_INFINITY;
    for (const [at, parent] of parents.entries()) {
      const own = logs.subarray(at * classCount, (at + 1) * classCount);
      for (let label = 0; label < classCount; label++)
        own[label] = parentLogs[parent * classCount + label] ?? 0;
      for (const cell of cells) {
        if (cell === parent) continue;
        const from = (parent * cellCount + cell) * classCount;
        for (let label = 0; label < classCount; label++) {
          own[label] = (own[label] ?? 0) + (childLogs[from + label] ?? 0);
        }
      }
      for (const log of own) if (log > top) top = log;
    }
    const sum = new Float64Array(classCount);
    for (const [at, log] of logs.entries()) {
      sum[at % classCount] = (sum[at % classCount] ?? 0) + Math.exp(log - top);
    }
    return [normaliseLogs(sum.map((value) => Math.log(Math.max(value, 1e-300))))];
  };
}
