/**
 * The uncertainty left in some probabilities, in bits: H = - sum p log2 p.
 *
 * @param probabilities each 0 or more; they need not add up to 1 and are scaled
 * @returns 0 (certain) to log2 n (all alike); 0 for no probabilities at all
 * @example entropyBits([0.5, 0.5]) // 1
 * Source: Shannon 1948.
 */
export function entropyBits(probabilities: ArrayLike<number>): number {
  let sum = 0;
  let raw = 0;
  // By place: an iterator over a typed array makes garbage at every step, and this is asked thousands of times an answer.
  for (let at = 0; at < probabilities.length; at += 1) {
    const p = probabilities[at] ?? 0;
    if (p <= 0) continue;
    sum += p;
    raw += p * Math.log2(p);
  }
  return sum > 0 ? Math.max(0, Math.log2(sum) - raw / sum) : 0;
}
