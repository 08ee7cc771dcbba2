/**
 * Counts the typing slips between two words: letters missed, added, changed, or two neighbours swapped.
 * Optimal string alignment distance; stops early and answers `limit + 1` when the words lie further apart than `limit`.
 *
 * @param limit the largest distance of interest, 0 or more
 * @returns whole number from 0; 0 only for equal words; symmetric
 * @example editDistance("vlave", "valve", 2) // 1
 * Source: Damerau 1964; optimal string alignment as in Boytsov 2011, section 2.
 */
export function editDistance(a: string, b: string, limit = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, at(before, j - 2) + 1);
      }
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > limit) return limit + 1;
    before = last;
    last = row;
  }
  return Math.min(at(last, b.length), limit + 1);
}

// Every index asked for lies inside its row by construction.
const at = (row: readonly number[], index: number): number => row[index] ?? 0;
