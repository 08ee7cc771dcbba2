import { chooseSwap, type NextSwap } from "./chooseSwap";
import { diagnosisWeight } from "./diagnosisWeight";
import { minimalHittingSets } from "./minimalHittingSets";
import { plainName } from "./plainName";
import { type SwapAspect, type SwapObservation, type SwapResult, swapAspects } from "./swapObservation";
import { type SwapPair, swapPairs } from "./swapPairs";

/** Where one part stands after the swaps, and with which partners it ran free or did not. */
export type SwapSuspect = Readonly<{
  part: string;
  standing: "suspect" | "possible" | "cleared";
  freeIn: readonly string[];
  stuckIn: readonly string[];
  /** Places in the stroke at which it bound, over all its partners. */
  stuckAt: readonly string[];
  /** What was the same with all of two or more partners that it bound in, which none of them can say of itself. */
  constant: readonly SwapAspect[];
}>;

/** The same pair was free and was not: to be tried again before anything is built on it. */
export type SwapContradiction = Readonly<{ a: string; b: string; results: readonly SwapResult[] }>;

/** What a set of swaps says about which part is at fault. */
export type SwapReading = Readonly<{
  /** Pairs that did not run free: at least one of each is at fault, or the two do not suit each other. */
  conflicts: readonly (readonly [string, string])[];
  /** Minimal hitting sets of the conflicts, likeliest first. */
  diagnoses: readonly (readonly string[])[];
  suspects: readonly SwapSuspect[];
  /** Pairs that bind though each of the two ran free elsewhere and neither is blamed before the other: look at how they fit together. */
  unsuited: readonly (readonly [string, string])[];
  nextSwap?: NextSwap;
  contradictions: readonly SwapContradiction[];
}>;

/** More parts than this at fault at once is a wreck, not a diagnosis; it also keeps any input cheap. Chosen. */
const mostFaults = 10;

/**
 * Reads swap tests: which parts are at fault, judged by what ran free with what.
 *
 * Each pair that dragged or stuck is a conflict; the diagnoses are the minimal hitting sets of the conflicts, ordered by
 * `diagnosisWeight`: fewer parts before more, and a part that ran free with another partner after one that never did. A pair that ran
 * free, both of whose members are in conflicts elsewhere, weighs against both and clears neither: if that leaves a sticking pair's two
 * members equally placed, the pair is listed as unsuited.
 *
 * Standing: `suspect` when the part is in every one of the likeliest diagnoses, or in one of them and never ran free; `possible` when
 * it is in one of them though it ran free elsewhere, or bound and never ran free; `cleared` otherwise: it ran free, and what it
 * bound in is better explained by the partner. A pair that bound even once is a conflict, and its free runs clear nobody.
 *
 * @param observations in any order; names are compared in small letters with single spaces and come back so
 * @param options.atHand further parts that could be tried; default only those observed
 * @returns see `SwapReading`; parts and pairs in the order in which they were first seen; `diagnoses` is `[[]]` when all ran free
 * and `[]` when it would take more than ten parts at fault
 * @throws RangeError when a name is empty or a part is tried with itself
 * @example readSwaps([{ a: "piston 2", b: "casing 2", result: "sticks" }, { a: "piston 2", b: "casing 1", result: "free" }]).diagnoses
 * // [["casing 2"], ["piston 2"]]
 * Source: Reiter 1987; de Kleer & Williams 1987. The weight given to free runs: common practice.
 */
export function readSwaps(
  observations: readonly SwapObservation[],
  options: Readonly<{ atHand?: readonly string[] }> = {},
): SwapReading {
  const pairs = swapPairs(observations);
  const conflicts = pairs.filter(({ free }) => !free).map(({ a, b }): readonly [string, string] => [a, b]);
  const weighed = minimalHittingSets(conflicts, { maxSize: mostFaults })
    .map((parts) => ({ parts, weight: diagnosisWeight(parts, pairs) }))
    // The sort is stable: equal weights stay by size and name.
    .sort((one, other) => other.weight - one.weight);
  const likeliest = weighed.filter(({ weight }) => weight === weighed[0]?.weight).map(({ parts }) => parts);
  const suspects = [...new Set(pairs.flatMap(({ a, b }) => [a, b]))].map((part) =>
    standPart(part, pairs, likeliest),
  );
  const evenly = new Set(
    suspects
      .filter(({ standing, freeIn }) => standing === "possible" && freeIn.length > 0)
      .map(({ part }) => part),
  );
  const nextSwap = chooseSwap(weighed, pairs, (options.atHand ?? []).map(plainName));
  return {
    conflicts,
    diagnoses: weighed.map(({ parts }) => parts),
    suspects,
    unsuited: conflicts.filter(([a, b]) => evenly.has(a) && evenly.has(b)),
    ...(nextSwap ? { nextSwap } : {}),
    contradictions: pairs
      .filter(({ contradictory }) => contradictory)
      .map(({ a, b, results }) => ({ a, b, results })),
  };
}

function standPart(
  part: string,
  pairs: readonly SwapPair[],
  likeliest: readonly (readonly string[])[],
): SwapSuspect {
  const own = pairs.filter(({ a, b }) => a === part || b === part);
  const partnersWhere = (free: boolean) =>
    own.filter((pair) => pair.free === free).map(({ a, b }) => (a === part ? b : a));
  const [freeIn, stuckIn] = [partnersWhere(true), partnersWhere(false)];
  const blamedIn = likeliest.filter((diagnosis) => diagnosis.includes(part)).length;
  const sure = blamedIn > 0 && (blamedIn === likeliest.length || freeIn.length === 0);
  return {
    part,
    standing: sure ? "suspect" : blamedIn > 0 || freeIn.length === 0 ? "possible" : "cleared",
    freeIn,
    stuckIn,
    stuckAt: [...new Set(own.flatMap(({ stuck }) => stuck.where))],
    constant: swapAspects.filter((aspect) => isConstant(part, aspect, pairs)),
  };
}

/** Told alike with two partners or more, while with none of these partners it could as well be the partner's. */
function isConstant(part: string, aspect: SwapAspect, pairs: readonly SwapPair[]): boolean {
  const partners = partnersAlike(part, aspect, pairs);
  return partners.length > 1 && partners.every((partner) => partnersAlike(partner, aspect, pairs).length < 2);
}

/** The partners with which a part bound at one place, way or turn; none where it was not the same with all. */
function partnersAlike(part: string, aspect: SwapAspect, pairs: readonly SwapPair[]): readonly string[] {
  const own = pairs.filter(({ a, b, stuck }) => (a === part || b === part) && stuck[aspect].length > 0);
  const told = new Set(own.flatMap(({ stuck }) => stuck[aspect]));
  return told.size === 1 ? own.map(({ a, b }) => (a === part ? b : a)) : [];
}
