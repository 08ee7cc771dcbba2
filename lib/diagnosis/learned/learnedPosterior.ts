import { classPrior } from "../../similarity/learned/classPrior";
import type { LabelledRows } from "../../similarity/learned/feature";
import { judgesFor } from "./judges";
import { logSumExp } from "./logSumExp";
import type { Judge, Opinions } from "./opinion";
import { pickRows } from "./pickRows";
import { learnPoolWeights, poolLogs } from "./poolWeights";
import { sampleRows } from "./sampleRows";
import { stratifiedFolds } from "./stratifiedFolds";

/** Folds within the rows learned from, by which the pool's weights are found: more where there are few rows. Chosen. */
const innerFolds = { few: 10, many: 5, fewRows: 1000 } as const;
/** Pull of the pool's weights toward equal ones. Chosen: see tests/reference/data/README.md. */
const poolPull = 5;
/** Say of the prior in every answer, in rows: nobody is surer than the casebook is large. Chosen. */
const doubtRows = 0.5;
/** Rows by which the pool's weights are found at most: fewer where they are wide, by cells, but not under 300. Chosen: seconds, not minutes. */
const weighing = { mostRows: 1500, mostCells: 60_000, leastRows: 300 } as const;
/** Pairs of a row asked about and a row that votes, should all be asked: beyond, fewer vote, but not under 2,000. Chosen likewise. */
const counting = { mostPairs: 4e7, leastRows: 2000 } as const;

/**
 * Learns P(class | what is known of a row) from rows: several ways of judging (`judgesFor`), pooled log-linearly. What each
 * counts for is learned by folds within the rows, so that no row is judged by what it taught; the weights temper as well.
 * Every answer keeps a little of the prior.
 *
 * @param settled rows by which everything is settled that takes long to learn
 * @param random by which rows are dealt into folds
 * @returns given rows to count over, which may be more or fewer than those settled by: a function from a row's number to the
 *   probabilities of its classes, each over 0, adding up to 1
 * Source: stacking, Wolpert 1992; logarithmic pool, Genest & Zidek 1986.
 */
export function learnPosterior(
  data: LabelledRows,
  settled: Int32Array,
  random: () => number,
): (rows: Int32Array) => (row: number) => Float64Array {
  const judges = judgesFor(data.features);
  const { mostRows, mostCells, leastRows } = weighing;
  const narrow = Math.floor(mostCells / Math.max(1, data.features.length));
  const weighingRows = sampleRows(data, settled, Math.min(mostRows, Math.max(leastRows, narrow)));
  const weights = weighJudges(pickRows(data, weighingRows), judges, random);
  const settledFew = sampleRows(data, settled, rowsToCount(settled.length));
  const learned = judges.map((judge) => judge.learn(data, settledFew));
  return (rows) => {
    const few = sampleRows(data, rows, rowsToCount(rows.length));
    const ask = together(learned.map((count) => count(few)));
    const prior = classPrior(data, rows);
    const doubt = doubtRows / (rows.length + 1);
    return (row) => {
      const logs = poolLogs(ask(row), weights);
      const total = logSumExp(logs);
      return logs.map((log, label) => (1 - doubt) * Math.exp(log - total) + doubt * (prior[label] ?? 0));
    };
  };
}

function weighJudges(data: LabelledRows, judges: readonly Judge[], random: () => number): Float64Array {
  const { labels } = data;
  const rows = Int32Array.from(labels.keys());
  const wanted = rows.length < innerFolds.fewRows ? innerFolds.few : innerFolds.many;
  const folds = stratifiedFolds(labels, Math.min(wanted, rows.length), random);
  const opinions: (readonly Float64Array[])[] = [];
  for (const fold of new Set(folds)) {
    const within = rows.filter((row) => folds[row] !== fold);
    const ask = together(judges.map((judge) => judge.learn(data, within)(within)));
    for (const row of rows) if (folds[row] === fold) opinions[row] = ask(row);
  }
  return learnPoolWeights(opinions, labels, poolPull);
}

function together(all: readonly Opinions[]): Opinions {
  return (row) => all.flatMap((ask) => ask(row));
}

function rowsToCount(rowCount: number): number {
  return Math.max(counting.leastRows, Math.floor(counting.mostPairs / Math.max(1, rowCount)));
}
