/**
 * Counts the letters to miss, add or change until one word is the other (no swaps); stops early past the limit.
 *
 * @param limit the largest count of interest, 0 or more
 * @returns whole number from 0; `limit + 1` where it is more than the limit; symmetric
 * @example letterChanges("vlave", "valve", 2) // 2
 * Source: Levenshtein 1966; the table as in Wagner & Fischer 1974.
 */
export function letterChanges(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  const row = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i += 1) {
    let diagonal = row[0] ?? 0;
    let least = i;
    row[0] = i;
    for (let j = 1; j <= b.length; j += 1) {
      const above = row[j] ?? 0;
      const changed = diagonal + (a.charCodeAt(i - 1) === b.charCodeAt(j - 1) ? 0 : 1);
      const cost = Math.min(changed, above + 1, (row[j - 1] ?? 0) + 1);
      row[j] = cost;
      diagonal = above;
      if (cost < least) least = cost;
    }
    if (least > limit) return limit + 1;
  }
  return Math.min(row[b.length] ?? 0, limit + 1);
}
