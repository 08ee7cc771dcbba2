/**
 * Distances from a row to every row that was learned from, in their order, added up over the features.
 *
 * @param into filled with the distances, each 0 or more; as long as the rows learned from
 */
export type DistanceTo = (row: number, into: Float64Array) => void;

/** The part of one feature in the distances: adds them, times the weight (default 1), to what is there. */
export type AddDistance = (row: number, into: Float64Array, weight?: number) => void;

/**
 * Adds up the parts of all features.
 *
 * @param weights of the features, each 0 or more; default all 1
 */
export function sumOf(parts: readonly AddDistance[], weights?: Float64Array): DistanceTo {
  return (row, into) => {
    into.fill(0);
    for (const [at, add] of parts.entries()) add(row, into, weights?.[at] ?? 1);
  };
}

/**
 * The part of a coded feature from a table of differences.
 *
 * @param differences between codes a and b at [a * width + b], each 0 or more
 * @param rows those learned from
 */
export function byTable(
  codes: Uint16Array,
  width: number,
  differences: Float64Array,
  rows: Int32Array,
): AddDistance {
  const known = Uint16Array.from(rows, (row) => codes[row] ?? 0);
  return (row, into, weight = 1) => {
    const from = (codes[row] ?? 0) * width;
    const differencesFrom = differences.slice(from, from + width);
    for (let code = 0; code < width; code++) differencesFrom[code] = (differencesFrom[code] ?? 0) * weight;
    for (let at = 0; at < known.length; at++) {
      into[at] = (into[at] ?? 0) + (differencesFrom[known[at] ?? 0] ?? 0);
    }
  };
}
