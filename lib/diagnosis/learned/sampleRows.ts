import type { LabelledRows } from "../../similarity/learned/feature";

/**
 * Some of the rows, every class with its share of them and at least one: of each class every so many-th row in the order given.
 *
 * @param most how many rows at most, give or take one a class; all where there are no more
 */
export function sampleRows({ labels, classCount }: LabelledRows, rows: Int32Array, most: number): Int32Array {
  if (rows.length <= most) return rows;
  const share = most / rows.length;
  const due = new Float64Array(classCount).fill(1 - share);
  return rows.filter((row) => {
    const label = labels[row] ?? 0;
    const owed = (due[label] ?? 0) + share;
    due[label] = owed >= 1 ? owed - 1 : owed;
    return owed >= 1;
  });
}
