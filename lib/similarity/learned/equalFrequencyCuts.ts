import { cutBetween } from "./cutBetween";

/** The known numbers of some rows, ascending. */
function sortKnown(numbers: Float64Array, rows: Int32Array): Float64Array {
  return Float64Array.from(rows, (row) => numbers[row] ?? Number.NaN)
    .filter((number) => !Number.isNaN(number))
    .sort();
}

/**
 * Cuts numbers into bins that hold about as many rows each; rows with the same number stay together.
 *
 * @param binCount at most this many bins, 1 or more
 * @returns rising cut points: a number belongs to bin i where i cut points lie below it
 * Source: equal-frequency intervals, Dougherty, Kohavi & Sahami 1995.
 */
export function equalFrequencyCuts(numbers: Float64Array, rows: Int32Array, binCount: number): number[] {
  const sorted = sortKnown(numbers, rows);
  const cuts: number[] = [];
  for (let bin = 1; bin < binCount; bin++) {
    let at = Math.max(1, Math.floor((sorted.length * bin) / binCount));
    while (at < sorted.length && sorted[at] === sorted[at - 1]) at += 1;
    const below = sorted[at - 1];
    const above = sorted[at];
    if (below === undefined || above === undefined) break;
    const cut = cutBetween(below, above);
    if (cuts.length === 0 || cut > (cuts.at(-1) ?? cut)) cuts.push(cut);
  }
  return cuts;
}
