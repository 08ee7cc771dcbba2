/**
 * A stream of numbers in 0..1 (1 excluded) that a seed fixes on every machine.
 *
 * @param seed whole, 0 to 2^32 - 1
 * Source: the 32-bit generator mulberry32 (Ettinger 2017, public domain), written anew.
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
