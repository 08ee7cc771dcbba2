import { type AddDistance, byTable } from "./distance";
import { encodeFeature } from "./encodeFeature";
import type { CodedFeature, LabelledRows, NumericFeature } from "./feature";
import { unknownTells } from "./unknownTells";

/** Numbers are compared up to this many standard deviations from their mean: a slip of the pen is no giant. Chosen. */
const mostDeviations = 4;
/** Difference of numbers of which one is unknown: that of two drawn at random, as these are halved and squared. */
const expectedNumberDifference = 0.5;

/**
 * Learns how far rows are apart without looking at the classes: words differ by 0 or 1, numbers by
 * ((x - y) / (2 standard deviations))^2. Where one is unknown they differ as expected of a row drawn at random; where it
 * tells about the class that a value is unknown, unknown is a value like any other.
 *
 * Source: Gower 1971; standard deviations in place of the range as in Wilson & Martinez 1997.
 */
export function learnPlainDifference(data: LabelledRows, rows: Int32Array): AddDistance[] {
  return data.features.map((feature) =>
    feature.kind === "coded" ? compareWords(feature, data, rows) : compareNumbers(feature, rows),
  );
}

function compareWords(feature: CodedFeature, data: LabelledRows, rows: Int32Array): AddDistance {
  const { codes, width } = encodeFeature(feature, rows, []);
  const counts = new Float64Array(width);
  for (const row of rows) counts[codes[row] ?? 0] = (counts[codes[row] ?? 0] ?? 0) + 1;
  const known = Math.max(1, rows.length - (counts[0] ?? 0));
  const differences = new Float64Array(width * width).fill(1);
  let alike = 0;
  for (let code = 0; code < width; code++) {
    differences[code * width + code] = 0;
    if (code > 0) alike += ((counts[code] ?? 0) / known) ** 2;
  }
  if (!unknownTells(codes, data, rows)) {
    differences[0] = 1 - alike;
    for (let code = 1; code < width; code++) {
      const expected = 1 - (counts[code] ?? 0) / known;
      differences[code * width] = expected;
      differences[code] = expected;
    }
  }
  return byTable(codes, width, differences, rows);
}

function compareNumbers({ numbers }: NumericFeature, rows: Int32Array): AddDistance {
  const scaled = standardise(numbers, rows);
  if (scaled === undefined) return () => {};
  const known = Float64Array.from(rows, (row) => scaled[row] ?? Number.NaN);
  return (row, into, weight = 1) => {
    const own = scaled[row] ?? Number.NaN;
    for (let at = 0; at < known.length; at++) {
      const gap = (own - (known[at] ?? Number.NaN)) / 2;
      into[at] = (into[at] ?? 0) + weight * (Number.isNaN(gap) ? expectedNumberDifference : gap * gap);
    }
  };
}

/**
 * Numbers in standard deviations from their mean, both taken over some rows; at most 4 either way, NaN where unknown.
 *
 * @returns undefined where the rows know no two different numbers
 */
export function standardise(numbers: Float64Array, rows: Int32Array): Float64Array | undefined {
  let largest = 0;
  let count = 0;
  for (const row of rows) {
    const number = numbers[row] ?? Number.NaN;
    if (Number.isNaN(number)) continue;
    count += 1;
    largest = Math.max(largest, Math.abs(number));
  }
  if (largest === 0) return undefined;
  // In shares of the largest, so that sums and squares stay finite.
  let sum = 0;
  for (const row of rows) sum += known(numbers, row) / largest;
  const mean = sum / count;
  let squares = 0;
  for (const row of rows) {
    const number = numbers[row] ?? Number.NaN;
    if (!Number.isNaN(number)) squares += (number / largest - mean) ** 2;
  }
  const deviation = Math.sqrt(squares / count);
  if (!(deviation > 1e-12)) return undefined;
  return numbers.map((number) =>
    Math.max(-mostDeviations, Math.min(mostDeviations, (number / largest - mean) / deviation)),
  );
}

/** The number of a row, 0 where it is unknown. */
function known(numbers: Float64Array, row: number): number {
  const number = numbers[row] ?? Number.NaN;
  return Number.isNaN(number) ? 0 : number;
}
