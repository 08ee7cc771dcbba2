import type { Answer, Engine, LabelledTable } from "../engine";
import type { TableColumn } from "../tables/table";

/** How far two rows are apart in one column, 0..1. */
type ColumnDistance = (a: number, b: number) => number;

/**
 * The plain nearest neighbour, for comparison: distance = sum over the columns of 0 or 1 for words, |a - b| / range for
 * numbers, and 1 where either row does not know the value. All rows that are nearest have a vote, and each class 1/n of one,
 * so that its counts are those of the usual program.
 *
 * Source: Aha, Kibler & Albert 1991 (IB1); Gower 1971 for mixed columns.
 */
export const nearestNeighbour: Engine = {
  learn: (data) => (rows) => answerFrom(data, rows),
  visitsToRecount: (rowCount, columnCount) => rowCount * columnCount,
};

function answerFrom({ columns, labels, classCount }: LabelledTable, rows: Int32Array): Answer {
  const distances = columns.map((column) => distanceIn(column, rows));
  return (query) => {
    let least = Number.POSITIVE_INFINITY;
    const votes = new Float64Array(classCount);
    for (const row of rows) {
      let distance = 0;
      for (const distanceOf of distances) {
        distance += distanceOf(query, row);
        if (distance > least) break;
      }
      if (distance > least) continue;
      if (distance < least) votes.fill(0);
      least = distance;
      const label = labels[row] ?? 0;
      votes[label] = (votes[label] ?? 0) + 1;
    }
    const say = 1 / Math.max(1, rows.length);
    const total = votes.reduce((sum, vote) => sum + vote + say, 0);
    return votes.map((vote) => (vote + say) / total);
  };
}

function distanceIn(column: TableColumn, rows: Int32Array): ColumnDistance {
  if (column.kind === "nominal") {
    const { codes } = column;
    return (a, b) => (codes[a] === codes[b] && codes[a] !== -1 ? 0 : 1);
  }
  const { numbers } = column;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const row of rows) {
    const number = numbers[row] ?? Number.NaN;
    if (number < low) low = number;
    if (number > high) high = number;
  }
  // Halved, so that a range wider than the largest double stays finite.
  const halfRange = high / 2 - low / 2;
  return (a, b) => {
    const numberA = numbers[a] ?? Number.NaN;
    const numberB = numbers[b] ?? Number.NaN;
    if (numberA === numberB) return 0;
    const share = Math.abs(numberA / 2 - numberB / 2) / halfRange;
    // NaN where either is unknown; infinite where the rows know one number at most; over 1 outside their range.
    return share >= 0 && share <= 1 ? share : 1;
  };
}
