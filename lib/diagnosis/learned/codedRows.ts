import { type EncodedFeature, encodeFeature } from "../../similarity/learned/encodeFeature";
import { equalFrequencyCuts } from "../../similarity/learned/equalFrequencyCuts";
import type { Feature, LabelledRows } from "../../similarity/learned/feature";
import { informativeCuts } from "../../similarity/learned/informativeCuts";

/** How numbers are cut into bins: where it tells most about the class, or into bins of as many rows each. */
export type Cutting = "informative" | "equal-frequency";

/** Bins of as many rows each: the root of the number of rows by this, 2 to 8. Chosen. */
const rowsRootPerBin = 2.5;
const mostBins = 8;

/** Cut points by feature, none for words. */
export function cutAll(data: LabelledRows, rows: Int32Array, cutting: Cutting): readonly number[][] {
  const binCount = Math.max(2, Math.min(mostBins, Math.round(Math.sqrt(rows.length) / rowsRootPerBin)));
  return data.features.map((feature) => {
    if (feature.kind === "coded") return [];
    return cutting === "informative"
      ? informativeCuts(feature.numbers, data.labels, data.classCount, rows)
      : equalFrequencyCuts(feature.numbers, rows, binCount);
  });
}

/** All features coded by their cut points. */
export function encodeAll(
  features: readonly Feature[],
  rows: Int32Array,
  cuts: readonly number[][],
): EncodedFeature[] {
  return features.map((feature, at) => encodeFeature(feature, rows, cuts[at] ?? []));
}
