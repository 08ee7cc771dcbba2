import type { CauseModel } from "../../diagnosis/causeModel";

/** What a check usually shows where a cause is at work: P(outcome | cause), 0..1. */
export type TypicalOutcome = Readonly<{ outcome: string; probability: number }>;

/** An outcome met in fewer jobs than this is not called typical. Chosen: more often than not. */
const leastProbability = 0.5;

/**
 * Says what a check made on the troubled part usually shows with a cause, by handbook and cases.
 *
 * @returns the likeliest outcome (the first of equals), or null where none is met in half of such jobs, or one of the two is not known
 */
export function typicalOutcome(model: CauseModel, cause: string, check: string): TypicalOutcome | null {
  const row = model.causes.indexOf(cause);
  if (row < 0) return null;
  let best: TypicalOutcome | null = null;
  for (const outcome of model.kindOf(check)?.outcomes ?? []) {
    const probability = model.likelihoods(check, outcome)?.[row] ?? 0;
    if (probability >= leastProbability && probability > (best?.probability ?? 0))
      best = { outcome, probability };
  }
  return best;
}
