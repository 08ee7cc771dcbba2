import type { CauseModel } from "./causeModel";
import { entropyBits } from "./entropy";
import type { Posterior } from "./posterior";

/**
 * What a check is expected to tell about the cause, in bits: H(C) - sum_o P(o) H(C | o).
 *
 * @param belief probabilities now; "none of these" counts as one more cause that makes every outcome equally likely
 * @returns 0 up to the entropy of the belief; 0 for a key that the model does not know
 * Source: Lindley 1956; Quinlan 1986.
 */
export function informationGainBits(model: CauseModel, belief: Posterior, key: string): number {
  const kind = model.kindOf(key);
  if (!kind) return 0;
  const now = [...belief.causes, belief.noneFits];
  let after = 0;
  for (const outcome of kind.outcomes) {
    const likelihoods = model.likelihoods(key, outcome);
    const joint = now.map((p, row) => p * (likelihoods?.[row] ?? 1 / kind.outcomes.length));
    const probability = joint.reduce((sum, value) => sum + value, 0);
    after += probability * entropyBits(joint);
  }
  return Math.max(0, entropyBits(now) - after);
}
