/**
 * log sum exp(x), without overflow.
 *
 * @returns -Infinity for no numbers, or where all are
 */
export function logSumExp(logs: Float64Array): number {
  let top = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > top) top = log;
  if (top === Number.NEGATIVE_INFINITY) return top;
  let sum = 0;
  for (const log of logs) sum += Math.exp(log - top);
  return top + Math.log(sum);
}

/** The logarithms less their log-sum-exp: those of probabilities that add up to 1. */
export function normaliseLogs(logs: Float64Array): Float64Array {
  const total = logSumExp(logs);
  return logs.map((log) => log - total);
}
