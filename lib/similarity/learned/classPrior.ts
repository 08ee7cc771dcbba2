import type { LabelledRows } from "./feature";

/**
 * How common each class is among some rows: (n_c + 1) / (n + C).
 *
 * @returns probabilities by class, each over 0, adding up to 1
 * Source: Laplace's rule of succession.
 */
export function classPrior({ labels, classCount }: LabelledRows, rows: Int32Array): Float64Array {
  const prior = new Float64Array(classCount).fill(1);
  for (const row of rows) prior[labels[row] ?? 0] = (prior[labels[row] ?? 0] ?? 0) + 1;
  return prior.map((count) => count / (rows.length + classCount));
}
