/**
 * How much a finding taught, in bits: how far belief moved, D(after || before) = sum p_after log2(p_after / p_before).
 * On average over what may be found this is the expected information gain of the check.
 *
 * @param before, after probabilities of the same things in the same order, each list adding up to 1
 * @returns 0 where nothing moved, else over 0; infinite where something held impossible has happened
 * @example relativeEntropyBits([0.5, 0.5], [1, 0]) // 1
 * Source: Kullback & Leibler 1951; Lindley 1956.
 */
export function relativeEntropyBits(before: ArrayLike<number>, after: ArrayLike<number>): number {
  let bits = 0;
  for (let at = 0; at < after.length; at++) {
    const now = after[at] ?? 0;
    if (now > 0) bits += now * Math.log2(now / (before[at] ?? 0));
  }
  return Math.max(0, bits);
}
