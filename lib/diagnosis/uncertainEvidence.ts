/** A finding that may have been made: its likelihood by cause, and how probable it is that it was. */
export type UncertainFinding = Readonly<{ likelihoods: Float64Array; share: number }>;

/**
 * What findings say of the causes of which one at most was made, nobody can be sure which:
 * P(words | c) / P(words) = sum over findings of P(f | words) P(f | c) / P(f), with P(f) the mean over the causes; where none
 * of them was made nothing is said.
 *
 * @param findings shares adding up to 1 or less
 * @returns logarithms by the order of the causes
 * Source: uncertain evidence, Jeffrey 1965; Pearl 1988, section 2.3.
 */
export function uncertainEvidence(findings: readonly UncertainFinding[], causeCount: number): Float64Array {
  const ratios = new Float64Array(causeCount);
  let told = 0;
  for (const { likelihoods, share } of findings) {
    const mean = likelihoods.reduce((sum, one) => sum + one, 0) / likelihoods.length;
    if (mean === 0) continue;
    told += share;
    for (let row = 0; row < causeCount; row++) {
      ratios[row] = (ratios[row] ?? 0) + (share * (likelihoods[row] ?? mean)) / mean;
    }
  }
  return ratios.map((ratio) => Math.log(1 - told + ratio));
}
