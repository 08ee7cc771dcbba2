import type { Codes, LabelledRows } from "./feature";

/** Say of the overall shares beside what was counted, in rows. Chosen. */
const priorRows = 2;

/**
 * Whether it tells something about the class that a value is unknown: whether the classes of the rows are foretold better,
 * each without its own count, from whether the value is known than without.
 *
 * @param codes by row, 0 where unknown
 * @returns false where all rows know it or none does
 * Source: leave-one-out log score, Stone 1974; Good 1952.
 */
export function unknownTells(codes: Codes, { labels, classCount }: LabelledRows, rows: Int32Array): boolean {
  const all = new Float64Array(classCount);
  const unknown = new Float64Array(classCount);
  let unknownCount = 0;
  for (const row of rows) {
    const label = labels[row] ?? 0;
    all[label] = (all[label] ?? 0) + 1;
    if (codes[row] !== 0) continue;
    unknown[label] = (unknown[label] ?? 0) + 1;
    unknownCount += 1;
  }
  if (unknownCount === 0 || unknownCount === rows.length) return false;
  let gain = 0;
  for (let label = 0; label < classCount; label++) {
    const base = (all[label] ?? 0) / (rows.length - 1 + classCount);
    const among = (count: number, total: number) =>
      count === 0 ? 0 : count * Math.log((count - 1 + priorRows * base) / (total - 1 + priorRows) / base);
    const unknowns = unknown[label] ?? 0;
    gain += among(unknowns, unknownCount) + among((all[label] ?? 0) - unknowns, rows.length - unknownCount);
  }
  return gain > 0;
}
