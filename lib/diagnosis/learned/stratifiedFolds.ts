/**
 * Deals rows into folds so that every class is spread over them as evenly as it goes: the rows of each class are shuffled
 * and dealt one after the other, the next class going on where the last one stopped. Folds differ by one row at most.
 *
 * @param labels class code by row, each 0 or more
 * @param foldCount whole, 2 up to the number of rows
 * @param random numbers in 0..1, 1 excluded
 * @returns the fold of every row, 0 to foldCount - 1
 * Source: stratified cross-validation, Kohavi 1995.
 */
export function stratifiedFolds(labels: Int32Array, foldCount: number, random: () => number): Int32Array {
  const byClass = new Map<number, number[]>();
  for (const [row, label] of labels.entries()) {
    const rows = byClass.get(label);
    if (rows) rows.push(row);
    else byClass.set(label, [row]);
  }
  const folds = new Int32Array(labels.length);
  let next = 0;
  for (const [, rows] of [...byClass].sort(([a], [b]) => a - b)) {
    for (let left = rows.length; left > 0; left--) {
      const drawn = Math.floor(random() * left);
      const row = rows[drawn] ?? 0;
      rows[drawn] = rows[left - 1] ?? 0;
      folds[row] = next;
      next = (next + 1) % foldCount;
    }
  }
  return folds;
}
