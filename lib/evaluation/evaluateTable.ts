import type { Answer, Engine, LabelledTable } from "./engine";
import type { Forecast } from "./scores/forecast";

/** Cells that counting anew for every row left out may look at; beyond it whole groups are left out. Chosen: a minute or so. */
const mostVisits = 2e9;
/** Groups of rows whose settings are learned without them when one row at a time is left out. Chosen. */
const settingsGroups = 20;
/** Groups that are left out whole where there are too many rows to leave each one out. Chosen. */
const largeGroups = 10;

/** The forecasts by row, and where the time went. */
export type Evaluation = Readonly<{
  forecasts: readonly Forecast[];
  foldCount: number;
  secondsLearning: number;
  secondsAnswering: number;
}>;

/**
 * Asks about every row with its fold left out of all learning.
 *
 * @param folds fold of every row
 * @param now seconds by some clock
 * Source: cross-validation, Stone 1974.
 */
export function crossValidate(
  data: LabelledTable,
  engine: Engine,
  folds: Int32Array,
  now: () => number,
): Evaluation {
  const watch = new Watch(now);
  const forecasts: Forecast[] = [];
  const names = [...new Set(folds)].sort((a, b) => a - b);
  for (const fold of names) {
    const train = rowsWhere(folds, (other) => other !== fold);
    const answer = watch.learning(() => engine.learn(data, train)(train));
    for (const row of rowsWhere(folds, (other) => other === fold)) {
      forecasts[row] = ask(answer, row, data, watch);
    }
  }
  return { forecasts, foldCount: names.length, ...watch.seconds };
}

/**
 * Asks about every row with that row left out: what takes long to learn (weights and the like) is learned without the whole
 * group that the row is in, the counts from all rows but the one. Where counting anew for every row would take too long
 * the groups are left out whole, and `foldCount` says how many.
 *
 * @param groupsOf deals the rows into a number of groups, for instance by `stratifiedFolds`
 * Source: leave-one-out, Stone 1974; settings left out by group so that no row has a say in how it is judged.
 */
export function leaveOneOutOfTable(
  data: LabelledTable,
  engine: Engine,
  groupsOf: (count: number) => Int32Array,
  now: () => number,
): Evaluation {
  const rowCount = data.labels.length;
  if (rowCount * engine.visitsToRecount(rowCount, data.columns.length) > mostVisits)
    return crossValidate(data, engine, groupsOf(Math.min(rowCount, largeGroups)), now);
  const watch = new Watch(now);
  const forecasts: Forecast[] = [];
  const groups = groupsOf(Math.min(rowCount, settingsGroups));
  for (const group of new Set(groups)) {
    const outside = rowsWhere(groups, (other) => other !== group);
    const count = watch.learning(() => engine.learn(data, outside));
    for (const row of rowsWhere(groups, (other) => other === group)) {
      const answer = watch.learning(() => count(rowsWhere(groups, (_, other) => other !== row)));
      forecasts[row] = ask(answer, row, data, watch);
    }
  }
  return { forecasts, foldCount: rowCount, ...watch.seconds };
}

function ask(answer: Answer, row: number, { labels }: LabelledTable, watch: Watch): Forecast {
  const probabilities = watch.answering(() => answer(row));
  return { probabilities, truth: labels[row] ?? 0 };
}

function rowsWhere(groups: Int32Array, isIn: (group: number, row: number) => boolean): Int32Array {
  const rows: number[] = [];
  for (const [row, group] of groups.entries()) if (isIn(group, row)) rows.push(row);
  return Int32Array.from(rows);
}

/** Adds up the time spent learning and answering. */
class Watch {
  readonly seconds = { secondsLearning: 0, secondsAnswering: 0 };

  constructor(readonly now: () => number) {}

  learning<T>(work: () => T): T {
    return this.#time("secondsLearning", work);
  }

  answering<T>(work: () => T): T {
    return this.#time("secondsAnswering", work);
  }

  #time<T>(which: "secondsLearning" | "secondsAnswering", work: () => T): T {
    const start = this.now();
    const result = work();
    this.seconds[which] += this.now() - start;
    return result;
  }
}
