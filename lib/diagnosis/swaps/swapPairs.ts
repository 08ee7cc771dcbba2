import { pairKey } from "./pairKey";
import { plainName } from "./plainName";
import { type SwapAspect, type SwapObservation, type SwapResult, swapAspects } from "./swapObservation";

/** All that was seen of one pair of parts, whichever way round it was written. */
export type SwapPair = Readonly<{
  a: string;
  b: string;
  /** It ran free every time it was tried. */
  free: boolean;
  results: readonly SwapResult[];
  /** Where, which way and how turned it dragged or stuck, as far as told, without repeats. */
  stuck: Readonly<Record<SwapAspect, readonly string[]>>;
  /** It was free at one time and not at another, and not because another place, way or turn is meant. */
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
    const told = (aspect: SwapAspect) => [
      ...new Set(bound.flatMap((one) => (one[aspect] === undefined ? [] : [plainName(one[aspect])]))),
    ];
    return {
      a,
      b,
      free: bound.length === 0,
      results: [...new Set(seen.map(({ result }) => result))],
      stuck: { where: told("where"), way: told("way"), turned: told("turned") },
      contradictory: free.some((one) =>
        bound.some((other) => swapAspects.every((aspect) => isSame(aspect, one[aspect], other[aspect]))),
      ),
    };
  });
}

/**
 * Free without a place speaks of the whole stroke, free without a way of both; free at a place says nothing of another place, or
 * of one left unsaid. Without a turn it was not turned, which is a turn of its own.
 */
function isSame(aspect: SwapAspect, free: string | undefined, bound: string | undefined): boolean {
  if (free === undefined) return aspect !== "turned" || bound === undefined;
  return bound !== undefined && plainName(free) === plainName(bound);
}
