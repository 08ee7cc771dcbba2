import { cutBetween } from "./cutBetween";

/** Cutting stops at this depth of halving. Chosen: 64 bins are enough. */
const mostDepth = 6;

/**
 * Cuts numbers where that tells most about the class, as long as the gain pays for describing the cut.
 *
 * @param labels class code by row, 0 to classCount - 1
 * @returns rising cut points as in `equalFrequencyCuts`; none where no cut pays
 * Source: Fayyad & Irani 1993, Multi-interval discretization.
 */
export function informativeCuts(
  numbers: Float64Array,
  labels: Int32Array,
  classCount: number,
  rows: Int32Array,
): number[] {
  const sorted = [...rows]
    .filter((row) => !Number.isNaN(numbers[row]))
    .sort((a, b) => (numbers[a] ?? 0) - (numbers[b] ?? 0));
  const values = Float64Array.from(sorted, (row) => numbers[row] ?? 0);
  const classes = Int32Array.from(sorted, (row) => labels[row] ?? 0);
  const cuts: number[] = [];
  const cutWithin = (from: number, to: number, depth: number) => {
    const at = depth < mostDepth ? bestCut(values, classes, classCount, from, to) : undefined;
    if (at === undefined) return;
    cuts.push(cutBetween(values[at - 1] ?? 0, values[at] ?? 0));
    cutWithin(from, at, depth + 1);
    cutWithin(at, to, depth + 1);
  };
  cutWithin(0, values.length, 0);
  return cuts.sort((a, b) => a - b);
}

/** First place behind the best cut within a stretch of sorted rows; undefined where none pays for its description. */
function bestCut(
  values: Float64Array,
  classes: Int32Array,
  classCount: number,
  from: number,
  to: number,
): number | undefined {
  const right = new Float64Array(classCount);
  for (let at = from; at < to; at++) right[classes[at] ?? 0] = (right[classes[at] ?? 0] ?? 0) + 1;
  const whole = right.slice();
  const left = new Float64Array(classCount);
  let best: { at: number; spread: number; left: Float64Array; right: Float64Array } | undefined;
  for (let at = from + 1; at < to; at++) {
    const label = classes[at - 1] ?? 0;
    left[label] = (left[label] ?? 0) + 1;
    right[label] = (right[label] ?? 0) - 1;
    if (values[at] === values[at - 1]) continue;
    const spread = countedEntropy(left) + countedEntropy(right);
    if (best === undefined || spread < best.spread) {
      best = { at, spread, left: left.slice(), right: right.slice() };
    }
  }
  if (best === undefined) return undefined;
  const count = to - from;
  const entropy = (of: Float64Array) => countedEntropy(of) / of.reduce((sum, value) => sum + value, 0);
  const kinds = (of: Float64Array) => of.filter((value) => value > 0).length;
  const gain = (countedEntropy(whole) - best.spread) / count;
  const delta =
    Math.log2(3 ** kinds(whole) - 2) -
    (kinds(whole) * entropy(whole) -
      kinds(best.left) * entropy(best.left) -
      kinds(best.right) * entropy(best.right));
  return gain > (Math.log2(count - 1) + delta) / count ? best.at : undefined;
}

/** n H(counts) in bits. */
function countedEntropy(counts: Float64Array): number {
  let total = 0;
  let raw = 0;
  for (const count of counts) {
    if (count <= 0) continue;
    total += count;
    raw += count * Math.log2(count);
  }
  return total > 0 ? total * Math.log2(total) - raw : 0;
}
