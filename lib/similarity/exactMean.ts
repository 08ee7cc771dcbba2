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

  /** The mean in 0..1, or undefined when nothing was added. */
  mean(): number | undefined {
    return this.#count === 0 ? undefined : (this.#high + this.#low) / this.#count;
  }
}
