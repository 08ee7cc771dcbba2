import { normaliseLogs, type Posterior } from "./posterior";

/**
 * What one source says of the causes: log-likelihoods, or any logarithms that differ from them by a constant, by the order
 * of the causes; how much they count; and the log-likelihood of something unknown, where the source has one.
 */
export type Opinion = Readonly<{ logs: Float64Array; weight: number; noneLog?: number }>;

/**
 * Joins what several sources say, a log-linear pool: log P(c) = log P_before(c) + sum_k w_k log P_k(c) + constant.
 * A source that says nothing of something unknown is held to tell of it as of the causes on the whole.
 *
 * @param before belief before any of them; a cause that is impossible there stays at 0
 * @returns probabilities adding up to 1
 * Source: logarithmic opinion pool, Genest & Zidek 1986.
 */
export function poolOpinions(before: Posterior, opinions: readonly Opinion[]): Posterior {
  const sure = opinions.filter(({ noneLog }) => noneLog !== undefined);
  const aside = opinions.filter(({ noneLog }) => noneLog === undefined);
  const none = sure.reduce((sum, { noneLog = 0, weight }) => sum + weight * noneLog, 0);
  const first = join(before, sure, none);
  const held = 1 - first.noneFits;
  if (held <= 0) return first;
  const typical = aside.map(
    ({ logs }) => first.causes.reduce((sum, p, row) => sum + p * (logs[row] ?? 0), 0) / held,
  );
  return join(
    first,
    aside,
    aside.reduce((sum, { weight }, at) => sum + weight * (typical[at] ?? 0), 0),
  );
}

function join({ causes, noneFits }: Posterior, opinions: readonly Opinion[], none: number): Posterior {
  const logs = causes.map((probability, row) =>
    probability === 0
      ? Number.NEGATIVE_INFINITY
      : opinions.reduce((sum, one) => sum + one.weight * (one.logs[row] ?? 0), Math.log(probability)),
  );
  return normaliseLogs(logs, noneFits === 0 ? Number.NEGATIVE_INFINITY : Math.log(noneFits) + none);
}
