/**
 * The uncertainty left in some probabilities, in bits: H = - sum p log2 p.
 *
 * @param probabilities each 0 or more; they need not add up to 1 and are scaled
 * @returns 0 (certain) to log2 n (all alike); 0 for no probabilities at all
 * @example entropyBits([0.5, 0.5]) // 1
 * Source: Shannon 1948.
 */
export function entropyBits(probabilities: Iterable<number>): number {
  let sum = 0;
  let raw = 0;
  for (const p of probabilities) {
    if (p <= 0) continue;
    sum += p;
    raw += p * Math.log2(p);
  }
  return sum > 0 ? Math.max(0, Math.log2(sum) - raw / sum) : 0;
}
