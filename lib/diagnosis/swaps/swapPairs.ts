import { pairKey } from "./pairKey";
import { plainName } from "./plainName";
import type { SwapObservation, SwapResult } from "./swapObservation";

/** All that was seen of one pair of parts, whichever way round it was written. */
export type SwapPair = Readonly<{
  a: string;
  b: string;
  /** It ran free every time it was tried. */
  free: boolean;
  results: readonly SwapResult[];
  /** Places in the stroke at which it dragged or stuck, without repeats. */
  stuckAt: readonly string[];
  /** It was free at one time and not at another, and not because another place in the stroke is meant. */
  contradictory: boolean;
}>;

/**
 * Gathers observations by pair. Names are compared in small letters with single spaces.
 *
 * @param observations in any order; a pair may come more than once and either way round
 * @returns one entry a pair, in the order and the orientation in which it first came
 * @throws RangeError when a name is empty or a part is tried with itself
 */
export function swapPairs(observations: readonly SwapObservation[]): readonly SwapPair[] {
  const gathered = new Map<string, { a: string; b: string; seen: SwapObservation[] }>();
  for (const observation of observations) {
    const a = plainName(observation.a);
    const b = plainName(observation.b);
    if (a === "" || b === "" || a === b)
      throw new RangeError(
        `a swap must name two different parts; got "${observation.a}" and "${observation.b}"; write such as piston 2, casing 1`,
      );
    const key = pairKey(a, b);
    const pair = gathered.get(key) ?? { a, b, seen: [] };
    pair.seen.push(observation);
    gathered.set(key, pair);
  }
  return [...gathered.values()].map(({ a, b, seen }) => {
    const free = seen.filter(({ result }) => result === "free");
    const bound = seen.filter(({ result }) => result !== "free");
    const places = bound.flatMap(({ where }) => (where === undefined ? [] : [plainName(where)]));
    return {
      a,
      b,
      free: bound.length === 0,
      results: [...new Set(seen.map(({ result }) => result))],
      stuckAt: [...new Set(places)],
      contradictory: free.some((one) => bound.some((other) => samePlace(one.where, other.where))),
    };
  });
}

/** Free without a place speaks of the whole stroke; free at a place says nothing of another place, or of one left unsaid. */
function samePlace(freeAt: string | undefined, boundAt: string | undefined): boolean {
  if (freeAt === undefined) return true;
  return boundAt !== undefined && plainName(freeAt) === plainName(boundAt);
}
