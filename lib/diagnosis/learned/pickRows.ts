import type { LabelledRows } from "../../similarity/learned/feature";

/** A table of some rows alone, numbered anew from 0 in the order given: what is coded by row then costs no more than they are. */
export function pickRows({ features, labels, classCount }: LabelledRows, rows: Int32Array): LabelledRows {
  return {
    features: features.map((feature) =>
      feature.kind === "numeric"
        ? { ...feature, numbers: Float64Array.from(rows, (row) => feature.numbers[row] ?? Number.NaN) }
        : { ...feature, codes: Int32Array.from(rows, (row) => feature.codes[row] ?? 0) },
    ),
    labels: Int32Array.from(rows, (row) => labels[row] ?? 0),
    classCount,
  };
}
