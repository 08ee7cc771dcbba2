import type { Answer, Engine, LabelledTable } from "../engine";
import type { TableColumn } from "../tables/table";

/** Adds log P(value | class) of a row to every class. */
type AddEvidence = (row: number, logs: Float64Array) => void;

/** Least spread of a number within a class, as a share of its spread over all rows: a constant must not outweigh the rest. Chosen. */
const leastSpreadShare = 1e-3;

/**
 * Plain naive Bayes, for comparison: every count one more than counted, classes too; unknown values are skipped; numbers
 * are normal within a class.
 *
 * Source: Duda & Hart 1973; John & Langley 1995 for numbers.
 */
export const naiveBayes: Engine = {
  learn: (data) => (rows) => answerFrom(data, rows),
  visitsToRecount: (rowCount, columnCount) => rowCount * columnCount,
};

function answerFrom(data: LabelledTable, rows: Int32Array): Answer {
  const { labels, classCount } = data;
  const counts = new Float64Array(classCount).fill(1);
  for (const row of rows) counts[labels[row] ?? 0] = (counts[labels[row] ?? 0] ?? 0) + 1;
  const priorLogs = counts.map((count) => Math.log(count / (rows.length + classCount)));
  const evidence = data.columns.map((column) => learnColumn(column, data, rows));
  return (row) => {
    const logs = priorLogs.slice();
    for (const add of evidence) add(row, logs);
    return fromLogs(logs);
  };
}

/** Probabilities in proportion to exp of the logs, without overflow. */
function fromLogs(logs: Float64Array): Float64Array {
  const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const raised = logs.map((log) => Math.exp(log - top));
  const sum = raised.reduce((total, value) => total + value, 0);
  return raised.map((value) => value / sum);
}

function learnColumn(column: TableColumn, data: LabelledTable, rows: Int32Array): AddEvidence {
  const { labels, classCount } = data;
  if (column.kind === "numeric") return learnNumbers(column.numbers, data, rows);
  const { codes, values } = column;
  const width = values.length;
  const counts = new Float64Array(classCount * width).fill(1);
  const totals = new Float64Array(classCount).fill(width);
  for (const row of rows) {
    const code = codes[row] ?? -1;
    if (code < 0) continue;
    const label = labels[row] ?? 0;
    counts[label * width + code] = (counts[label * width + code] ?? 0) + 1;
    totals[label] = (totals[label] ?? 0) + 1;
  }
  return (row, logs) => {
    const code = codes[row] ?? -1;
    if (code < 0) return;
    for (let label = 0; label < classCount; label++) {
      logs[label] = (logs[label] ?? 0) + Math.log((counts[label * width + code] ?? 1) / (totals[label] ?? 1));
    }
  };
}

/** Mean and spread by class, of numbers scaled by the largest so that squares stay finite. */
function learnNumbers(
  numbers: Float64Array,
  { labels, classCount }: LabelledTable,
  rows: Int32Array,
): AddEvidence {
  let scale = 0;
  for (const row of rows) {
    const size = Math.abs(numbers[row] ?? 0);
    if (size > scale) scale = size;
  }
  if (scale === 0) return () => {};
  const scaled = (row: number) => (numbers[row] ?? Number.NaN) / scale;
  const moments = Array.from({ length: classCount }, () => new RunningMoments());
  const all = new RunningMoments();
  for (const row of rows) {
    const value = scaled(row);
    if (Number.isNaN(value)) continue;
    moments[labels[row] ?? 0]?.add(value);
    all.add(value);
  }
  if (all.variance() === 0) return () => {};
  const least = all.variance() * leastSpreadShare ** 2;
  const means = moments.map((one) => (one.count > 0 ? one.mean : all.mean));
  const variances = moments.map((one) => (one.count > 1 ? Math.max(least, one.variance()) : all.variance()));
  return (row, logs) => {
    const value = scaled(row);
    if (Number.isNaN(value)) return;
    for (let label = 0; label < classCount; label++) {
      const variance = variances[label] ?? 1;
      const density = -0.5 * (Math.log(variance) + (value - (means[label] ?? 0)) ** 2 / variance);
      logs[label] = (logs[label] ?? 0) + density;
    }
  };
}

/** Mean and variance in one pass. Source: Welford 1962. */
class RunningMoments {
  count = 0;
  mean = 0;
  #squares = 0;

  add(value: number): void {
    this.count += 1;
    const before = value - this.mean;
    this.mean += before / this.count;
    this.#squares += before * (value - this.mean);
  }

  /** Divided by count - 1; 0 for fewer than two. */
  variance(): number {
    return this.count > 1 ? this.#squares / (this.count - 1) : 0;
  }
}
