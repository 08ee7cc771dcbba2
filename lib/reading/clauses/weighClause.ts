import { logSumExp } from "../../diagnosis/learned/logSumExp";
import type { ReadingWeights } from "../../vocabulary/readingWeights";
import { type ClauseSources, clauseSourceNames } from "./clauseSources";

/** How probable it is that a clause tells of each outcome, by the order of the reader's `spoken`, and that it tells of none that is known. Together 1. */
export type ClauseShares = Readonly<{ outcomes: Float64Array; nothing: number }>;

/**
 * Joins what the sources say of a clause: log P(outcome) = sum of what each says, weighed, + constant.
 *
 * @param open which outcomes make sense here; the others have no share
 * Source: logarithmic opinion pool, Genest & Zidek 1986.
 */
export function weighClause(
  { says, strange }: ClauseSources,
  weights: ReadingWeights,
  open: readonly boolean[],
): ClauseShares {
  const logs = new Float64Array(open.length + 1);
  for (const name of clauseSourceNames) {
    const weight = weights[name];
    const said = says[name];
    for (let row = 0; row < open.length; row++) logs[row] = (logs[row] ?? 0) + weight * (said[row] ?? 0);
  }
  for (const [row, isOpen] of open.entries()) if (!isOpen) logs[row] = Number.NEGATIVE_INFINITY;
  logs[open.length] = weights.nothing + weights.nothingStrange * strange;

  const total = logSumExp(logs);
  const shares = logs.map((log) => Math.exp(log - total));
  return { outcomes: shares.subarray(0, open.length), nothing: shares[open.length] ?? 0 };
}
