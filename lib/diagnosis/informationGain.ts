import type { CauseModel } from "./causeModel";
import { entropyBits } from "./entropy";
import type { Posterior } from "./posterior";

/**
 * What a check is expected to tell about the cause, in bits: H(C) - sum_o P(o) H(C | o).
 *
 * @param belief probabilities now; "none of these" counts as one more cause that makes every outcome equally likely
 * @param nowBits the belief's `uncertaintyBits`: for several checks it need not be worked out again
 * @returns 0 up to the entropy of the belief; 0 for a key that the model does not know
 * Source: Lindley 1956; Quinlan 1986.
 */
export function informationGainBits(
  model: CauseModel,
  belief: Posterior,
  key: string,
  nowBits: number = uncertaintyBits(belief),
): number {
  const kind = model.kindOf(key);
  if (!kind) return 0;
  const { causes, noneFits } = belief;
  const alike = 1 / kind.outcomes.length;
  const joint = new Float64Array(causes.length + 1);
  let after = 0;
  for (const outcome of kind.outcomes) {
    const likelihoods = model.likelihoods(key, outcome);
    let probability = 0;
    let possible = 0;
    for (let row = 0; row < joint.length; row += 1) {
      const now = row < causes.length ? (causes[row] ?? 0) : noneFits;
      // Most causes are out of the question on the instrument at hand.
      if (now === 0) continue;
      const both = now * (likelihoods?.[row] ?? alike);
      joint[possible] = both;
      possible += 1;
      probability += both;
    }
    after += probability * entropyBits(joint.subarray(0, possible));
  }
  return Math.max(0, nowBits - after);
}

/** How uncertain the cause is, in bits, "none of these" counted as one more; 0 up to log2 of their number. */
export function uncertaintyBits({ causes, noneFits }: Posterior): number {
  const all = new Float64Array(causes.length + 1);
  all.set(causes);
  all[causes.length] = noneFits;
  return entropyBits(all);
}
