/** A source of random numbers that gives the same ones for the same seed. */
export type Random = Readonly<{
  /** The next number, 0 up to but not 1. */
  next: () => number;
  /** A whole number from `least` to `most`, both included. */
  whole: (least: number, most: number) => number;
  /** True with a probability of `share`. */
  chance: (share: number) => boolean;
  /** One of the list, all equally likely; undefined only for an empty list. */
  pick: <Item>(list: readonly Item[]) => Item | undefined;
  /** One of the list by weight; undefined for an empty list or no weight at all. */
  weigh: <Item>(list: readonly (readonly [Item, number])[]) => Item | undefined;
  /** A shuffled copy. */
  shuffle: <Item>(list: readonly Item[]) => Item[];
}>;

/** First outputs thrown away: seeds that lie close together start out alike. */
const warmUp = 16;

/**
 * Starts a stream of random numbers: x ^= x << 13, x ^= x >>> 17, x ^= x << 5 on 32 bits, period 2^32 - 1.
 *
 * @param seed any whole number; the only thing that the stream depends on
 * Source: Marsaglia 2003, Xorshift RNGs, Journal of Statistical Software 8 (14).
 */
export function seedRandom(seed: number): Random {
  // The golden ratio in 32 bits keeps seed 0 off the one state that the shifts never leave.
  let state = (seed ^ 0x9e3779b9) | 0 || 1;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  for (let skipped = 0; skipped < warmUp; skipped += 1) next();
  const pick: Random["pick"] = (list) => list[Math.floor(next() * list.length)];
  return {
    next,
    whole: (least, most) => least + Math.floor(next() * (most - least + 1)),
    chance: (share) => next() < share,
    pick,
    weigh: (list) => {
      let left = next() * list.reduce((sum, [, weight]) => sum + weight, 0);
      for (const [item, weight] of list) {
        left -= weight;
        if (left < 0) return item;
      }
      return undefined;
    },
    shuffle: (list) => {
      const rest = [...list];
      for (let last = rest.length - 1; last > 0; last -= 1) {
        const other = Math.floor(next() * (last + 1));
        const [a, b] = [rest[last], rest[other]];
        if (a !== undefined && b !== undefined) {
          rest[last] = b;
          rest[other] = a;
        }
      }
      return rest;
    },
  };
}
