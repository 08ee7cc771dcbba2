/**
 * One key for a pair of parts, whichever way round it was written.
 *
 * @param a a plain name
 * @param b another
 * @returns text that no other pair shares
 * @example pairKey("piston 2", "casing 1") === pairKey("casing 1", "piston 2") // true
 */
export function pairKey(a: string, b: string): string {
  return JSON.stringify(a < b ? [a, b] : [b, a]);
}
