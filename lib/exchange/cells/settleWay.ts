/** The ways in which a cell can be read, with what it says read so: `03/04/2021` by day first and by month first. */
export type Readings<Way, Value> = ReadonlyMap<Way, Value>;

/** A cell with its readings, and where it stands. */
export type ReadCell<Way, Value> = Readonly<{ line: number; text: string; readings: Readings<Way, Value> }>;

/** The one way in which a whole file is to be read: said by somebody, proven by a cell, or not known. */
export type SettledWay<Way> =
  | Readonly<{ kind: "said"; way: Way }>
  | Readonly<{ kind: "proven"; way: Way; line: number; text: string }>
  | Readonly<{ kind: "open" }>
  | Readonly<{ kind: "mixed"; line: number; text: string }>
  | Readonly<{ kind: "needless" }>;

/**
 * Settles how a file's cells are to be read from the cells that leave no choice: `23/04/2021` can only have its day first.
 * Nothing is guessed: where no cell tells, the way is open, and where two cells tell different ways it is mixed.
 *
 * @param said the way that somebody chose, which settles it
 */
export function settleWay<Way, Value>(
  cells: Iterable<ReadCell<Way, Value>>,
  ways: readonly Way[],
  said?: Way,
): SettledWay<Way> {
  if (said !== undefined) return { kind: "said", way: said };
  let possible = ways;
  let isNeeded = false;
  let proof: Readonly<{ line: number; text: string }> | undefined;
  for (const { line, text, readings } of cells) {
    const isPlain = readings.size === ways.length && new Set(readings.values()).size === 1;
    if (readings.size === 0 || isPlain) continue;
    isNeeded = true;
    const left = possible.filter((way) => readings.has(way));
    if (left.length === 0) return { kind: "mixed", line, text };
    if (left.length === 1 && possible.length > 1) proof = { line, text };
    possible = left;
  }
  const [way] = possible;
  if (proof && way !== undefined) return { kind: "proven", way, ...proof };
  return isNeeded ? { kind: "open" } : { kind: "needless" };
}

/**
 * Reads one cell by the settled way. Where none is settled a cell that can be read in one way only still counts.
 *
 * @returns undefined where the cell cannot be read so, or can be read in more ways than one
 */
export function readSettled<Way, Value>(
  readings: Readings<Way, Value>,
  settled: SettledWay<Way>,
): Value | undefined {
  if ("way" in settled) return readings.get(settled.way);
  const values = [...new Set(readings.values())];
  return values.length === 1 ? values[0] : undefined;
}
