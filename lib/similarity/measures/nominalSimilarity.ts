/**
 * Similarity of two values without an order: 1 if they are the same, 0 if not.
 *
 * @returns 0 or 1; symmetric; `nominalSimilarity("dented", "dented")` is 1.
 * Source: Gower 1971, section 2 (qualitative characters).
 */
export function nominalSimilarity(a: string, b: string): number {
  return a === b ? 1 : 0;
}
