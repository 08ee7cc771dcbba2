import { minimise } from "../../similarity/learned/minimise";
import { logSumExp } from "./logSumExp";

const search = { mostSteps: 60, tolerance: 1e-6 } as const;

/**
 * Learns how much each of several opinions should count in a log-linear pool, log P(c) = sum_k a_k log P_k(c) + constant,
 * so that the truths are foretold best. The weights also temper: they need not add up to 1. They are held near equal ones
 * that do, as by a normal prior around 1/K.
 *
 * @param opinions by row, then by way of judging: logarithms of the classes' probabilities, none of them learned with the row
 * @param truths class code by row
 * @param pull half of this times the squared distance from 1/K is added to the log loss in nats
 * @returns one weight a way of judging, each over 0
 * Source: logarithmic opinion pool, Genest & Zidek 1986; weights by held-out rows (stacking), Wolpert 1992; tempering as
 *   temperature scaling, Guo et al. 2017.
 */
export function learnPoolWeights(
  opinions: readonly (readonly Float64Array[])[],
  truths: Int32Array,
  pull: number,
): Float64Array {
  const count = opinions[0]?.length ?? 0;
  const classCount = opinions[0]?.[0]?.length ?? 0;
  const equal = 1 / Math.max(1, count);
  const flat = flatten(opinions, count, classCount);
  const logs = new Float64Array(classCount);
  const logWeights = minimise(
    (point, gradient) => {
      gradient.fill(0);
      const weights = point.map(Math.exp);
      let loss = 0;
      for (let row = 0; row < truths.length; row++) {
        const from = row * count * classCount;
        logs.fill(0);
        for (let at = 0; at < count; at++) {
          const weight = weights[at] ?? 0;
          const first = from + at * classCount;
          for (let label = 0; label < classCount; label++) {
            logs[label] = (logs[label] ?? 0) + weight * (flat[first + label] ?? 0);
          }
        }
        const truth = truths[row] ?? 0;
        const total = logSumExp(logs);
        loss += total - (logs[truth] ?? 0);
        for (let label = 0; label < classCount; label++) {
          logs[label] = Math.exp((logs[label] ?? 0) - total) - (label === truth ? 1 : 0);
        }
        for (let at = 0; at < count; at++) {
          const first = from + at * classCount;
          let slope = 0;
          for (let label = 0; label < classCount; label++)
            slope += (logs[label] ?? 0) * (flat[first + label] ?? 0);
          gradient[at] = (gradient[at] ?? 0) + slope;
        }
      }
      for (let at = 0; at < count; at++) {
        const excess = (weights[at] ?? 0) - equal;
        loss += 0.5 * pull * excess * excess;
        gradient[at] = ((gradient[at] ?? 0) + pull * excess) * (weights[at] ?? 0);
      }
      return loss;
    },
    new Float64Array(count).fill(Math.log(equal)),
    search,
  );
  return logWeights.map(Math.exp);
}

/** The opinions one after the other, by row, way of judging and class. */
function flatten(
  opinions: readonly (readonly Float64Array[])[],
  count: number,
  classCount: number,
): Float64Array {
  const flat = new Float64Array(opinions.length * count * classCount);
  for (const [row, said] of opinions.entries()) {
    for (const [at, opinion] of said.entries()) flat.set(opinion, (row * count + at) * classCount);
  }
  return flat;
}

/** sum_k a_k log P_k(c), not yet normalised. */
export function poolLogs(opinions: readonly Float64Array[], weights: Float64Array): Float64Array {
  const logs = new Float64Array(opinions[0]?.length ?? 0);
  for (const [at, opinion] of opinions.entries()) {
    const weight = weights[at] ?? 0;
    for (let label = 0; label < logs.length; label++) {
      logs[label] = (logs[label] ?? 0) + weight * (opinion[label] ?? 0);
    }
  }
  return logs;
}
