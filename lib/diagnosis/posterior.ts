import type { CauseModel } from "./causeModel";
import { findingEvidence } from "./findingEvidence";

/** Probabilities of all causes, in the model's order, and of none of them; they add up to 1. */
export type Posterior = Readonly<{ causes: Float64Array; noneFits: number }>;

export type PosteriorOptions = Readonly<{
  /** Which causes can be at work at all; the others get 0. Default: all. */
  possible?: (cause: string) => boolean;
  /** Probability, before any finding, that it is something the model does not know, 0..1. */
  nonePrior?: number;
  /** Keys said with doubt: they count half. */
  doubtful?: ReadonlySet<string>;
}>;

/** Jobs in a hundred that turn out to be something the handbook does not know. Chosen. */
export const defaultNonePrior = 0.04;

/**
 * Weighs the causes by the findings: log P(c | f) = log P(c) + sum log P(f_i | c) + constant.
 *
 * @param findings finding key -> outcome, as in `findingEvidence`
 * @returns probabilities adding up to 1; with no possible cause `noneFits` is 1
 * Source: naive Bayes, e.g. Duda & Hart 1973.
 */
export function weighCauses(
  model: CauseModel,
  findings: ReadonlyMap<string, string>,
  { possible = () => true, nonePrior = defaultNonePrior, doubtful = new Set() }: PosteriorOptions = {},
): Posterior {
  const open = model.causes.map((id) => possible(id));
  const total = model.causes.reduce((sum, _, row) => sum + (open[row] ? model.jobsOf(row) : 0), 0);
  if (total === 0) return { causes: new Float64Array(model.causes.length), noneFits: 1 };
  const logs = Float64Array.from(model.causes, (_, row) =>
    open[row] ? Math.log((1 - nonePrior) * (model.jobsOf(row) / total)) : Number.NEGATIVE_INFINITY,
  );
  const evidence = findingEvidence(model, findings, doubtful);
  return normaliseLogs(
    logs.map((log, row) => log + (evidence.logs[row] ?? 0)),
    Math.log(nonePrior) + evidence.noneLog,
  );
}

/** Turns logarithms into probabilities without overflow: log-sum-exp. */
export function normaliseLogs(logs: Float64Array, noneLog: number): Posterior {
  const top = logs.reduce((most, log) => Math.max(most, log), noneLog);
  if (top === Number.NEGATIVE_INFINITY) return { causes: new Float64Array(logs.length), noneFits: 1 };
  const raised = logs.map((log) => Math.exp(log - top));
  const none = Math.exp(noneLog - top);
  const sum = raised.reduce((total, value) => total + value, none);
  return { causes: raised.map((value) => value / sum), noneFits: none / sum };
}
