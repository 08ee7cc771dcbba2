import type { CauseModel } from "./causeModel";

/** What some findings say: their log-likelihood by the order of the causes, and under something that the model does not know. */
export type FindingEvidence = Readonly<{ logs: Float64Array; noneLog: number }>;

/** Weight of a finding said with doubt. Chosen. */
const doubtWeight = 0.5;

/**
 * Sums up what findings say of the causes: log P(f | c) = sum log P(f_i | c). Something unknown is held to make every outcome
 * of a check equally likely.
 *
 * @param findings finding key -> outcome; what the model does not know changes nothing
 * @param doubtful keys said with doubt: they count half
 * Source: naive Bayes, e.g. Duda & Hart 1973.
 */
export function findingEvidence(
  model: CauseModel,
  findings: ReadonlyMap<string, string>,
  doubtful: ReadonlySet<string> = new Set(),
): FindingEvidence {
  const logs = new Float64Array(model.causes.length);
  let noneLog = 0;
  for (const [key, outcome] of findings) {
    const likelihoods = model.likelihoods(key, outcome);
    const kind = model.kindOf(key);
    if (!likelihoods || !kind) continue;
    const weight = doubtful.has(key) ? doubtWeight : 1;
    for (let row = 0; row < logs.length; row++) {
      logs[row] = (logs[row] ?? 0) + weight * Math.log(likelihoods[row] ?? 1);
    }
    noneLog -= weight * Math.log(kind.outcomes.length);
  }
  return { logs, noneLog };
}
