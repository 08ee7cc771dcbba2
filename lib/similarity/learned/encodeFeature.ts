import type { Feature } from "./feature";

/** A feature whose every value is a code: 0 is unknown, 1 to width - 1 the values or the bins of a number. */
export type EncodedFeature = Readonly<{ codes: Uint16Array; width: number }>;

/** Of words with more values than this only the commonest keep a code of their own, the rest share one. Chosen. */
const mostValues = 60;

/**
 * Codes a feature's values; numbers by the cut points, rising.
 *
 * @param rows those by which values are common or rare
 */
export function encodeFeature(feature: Feature, rows: Int32Array, cuts: readonly number[]): EncodedFeature {
  if (feature.kind === "numeric") {
    return {
      codes: Uint16Array.from(feature.numbers, (number) => binOf(number, cuts)),
      width: cuts.length + 2,
    };
  }
  const { codes, valueCount } = feature;
  if (valueCount <= mostValues) return { codes: Uint16Array.from(codes), width: valueCount + 1 };
  const counts = new Int32Array(valueCount + 1);
  for (const row of rows) counts[codes[row] ?? 0] = (counts[codes[row] ?? 0] ?? 0) + 1;
  const newCode = new Uint16Array(valueCount + 1).fill(mostValues);
  newCode[0] = 0;
  const byCount = [...counts.keys()].slice(1).sort((a, b) => (counts[b] ?? 0) - (counts[a] ?? 0) || a - b);
  for (const [at, code] of byCount.slice(0, mostValues - 1).entries()) newCode[code] = at + 1;
  return { codes: Uint16Array.from(codes, (code) => newCode[code] ?? 0), width: mostValues + 1 };
}

/** 0 for NaN, else one more than the number of cut points below the number. */
function binOf(number: number, cuts: readonly number[]): number {
  if (Number.isNaN(number)) return 0;
  let low = 0;
  let high = cuts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (number > (cuts[middle] ?? 0)) low = middle + 1;
    else high = middle;
  }
  return low + 1;
}
