import { encodeFeature } from "./encodeFeature";
import type { LabelledRows } from "./feature";
import { informativeCuts } from "./informativeCuts";

/** Part of the weight that all features share equally, the rest by what they tell: a small casebook may err. Chosen. */
const equalPart = 0.1;

/**
 * Weighs features by what each tells about the class: its information gain in bits, less what chance alone would give
 * (width - 1)(classes - 1) / (2 n ln 2), drawn toward equal weights.
 *
 * @returns by feature, each over 0, with a mean of 1
 * Source: Quinlan 1986 (gain); Miller 1955 (bias of the estimate).
 */
export function informationWeights(data: LabelledRows, rows: Int32Array): Float64Array {
  const gains = Float64Array.from(data.features, (feature) => {
    const cuts =
      feature.kind === "numeric" ? informativeCuts(feature.numbers, data.labels, data.classCount, rows) : [];
    const { codes, width } = encodeFeature(feature, rows, cuts);
    return gainBits(codes, width, data, rows);
  });
  const mean = gains.reduce((sum, gain) => sum + gain, 0) / Math.max(1, gains.length);
  return gains.map((gain) => (mean > 0 ? equalPart + (1 - equalPart) * (gain / mean) : 1));
}

function gainBits(codes: Uint16Array, width: number, data: LabelledRows, rows: Int32Array): number {
  const { labels, classCount } = data;
  const joint = new Float64Array(width * classCount);
  const byCode = new Float64Array(width);
  const byClass = new Float64Array(classCount);
  for (const row of rows) {
    const code = codes[row] ?? 0;
    const label = labels[row] ?? 0;
    joint[code * classCount + label] = (joint[code * classCount + label] ?? 0) + 1;
    byCode[code] = (byCode[code] ?? 0) + 1;
    byClass[label] = (byClass[label] ?? 0) + 1;
  }
  const used = (of: Float64Array) => of.filter((count) => count > 0).length;
  const raw = (of: Float64Array) =>
    of.reduce((sum, count) => sum + (count > 0 ? count * Math.log2(count) : 0), 0);
  const gain = Math.log2(rows.length) + (raw(joint) - raw(byCode) - raw(byClass)) / rows.length;
  const byChance = ((used(byCode) - 1) * (used(byClass) - 1)) / (2 * rows.length * Math.LN2);
  return Math.max(0, gain - byChance);
}
