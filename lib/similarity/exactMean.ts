import { toShareGrid } from "./shareGrid";

/** Adding this and taking it away again rounds a number in 0..1 to the multiples of 2^-26, the spacing of doubles in 2^26..2^27. */
const TO_HIGH_HALF = 2 ** 26;

/**
 * A running mean of similarities in 0..1 that does not depend on the order in which they are added.
 * Each is put on the grid of 2^-52 and split into a multiple of 2^-26 and the rest; either sum is exact up to 2^26 (67 million) similarities.
 */
export class ExactMean {
  #high = 0;
  #low = 0;
  #count = 0;

  /** Add a similarity, `times` over (whole, 0 or more). */
  add(similarity: number, times = 1): void {
    const onGrid = toShareGrid(similarity);
    const high = onGrid + TO_HIGH_HALF - TO_HIGH_HALF;
    this.#high += high * times;
    this.#low += (onGrid - high) * times;
    this.#count += times;
  }

  /**
   * Add the similarities that are known, those at flag 1, of the first `rowCount` rows.
   *
   * @param similarities by row, NaN where unknown; it may end before the rows do.
   * @param live by row, 1 for a row that counts.
   */
  addKnown(similarities: Float64Array, live: Uint8Array, rowCount: number): void {
    const { high, low, count } = sumKnown(similarities, live, Math.min(rowCount, similarities.length));
    this.#high += high;
    this.#low += low;
    this.#count += count;
  }

  /** The mean in 0..1, or undefined when nothing was added. */
  mean(): number | undefined {
    return this.#count === 0 ? undefined : (this.#high + this.#low) / this.#count;
  }
}

/** A loop of its own, over nothing but arrays and local numbers: beside private fields it is compiled anew at every call. */
function sumKnown(
  similarities: Float64Array,
  live: Uint8Array,
  end: number,
): Readonly<{ high: number; low: number; count: number }> {
  let high = 0;
  let low = 0;
  let count = 0;
  for (let row = 0; row < end; row += 1) {
    const similarity = similarities[row] ?? Number.NaN;
    if (Number.isNaN(similarity) || live[row] !== 1) continue;
    const onGrid = toShareGrid(similarity);
    const coarse = onGrid + TO_HIGH_HALF - TO_HIGH_HALF;
    high += coarse;
    low += onGrid - coarse;
    count += 1;
  }
  return { high, low, count };
}
