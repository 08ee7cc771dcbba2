import type { Bracket } from "../bracket";

/** Two readings that cannot both be right: a plug passed where one no larger than it stopped. */
export type PlugContradiction = Readonly<{ passedMm: number; stoppedMm: number }>;

export type PlugBracket = Bracket & Readonly<{ contradictions: readonly PlugContradiction[] }>;

/**
 * Brackets the actual mating size of a bore by the plugs that passed and those that stopped, from one end to one depth.
 *
 *   low = largest plug that passed <= size < smallest plug that stopped = high
 *
 * Where a plug passed and one no larger stopped, each such pair is named, and the plugs in dispute bound nothing until they have
 * been tried again. The bracket is then sound as long as the mistaken plug is among those in dispute.
 *
 * @param plugs.passesMm diameters of the plugs that passed, in any order, repeats allowed
 * @param plugs.stopsMm diameters of the plugs that stopped
 * @returns the bracket, null at an end that no plug bounds; contradictions by passed, then stopped, ascending
 * @throws RangeError when a diameter is not a finite number above 0
 * @example plugBracket({ passesMm: [17], stopsMm: [17.1] }) // { lowMm: 17, highMm: 17.1, contradictions: [] }
 * Source: ISO 14405-1 and ASME Y14.5 for the term actual mating envelope; the reading of plugs is common practice.
 */
export function plugBracket(
  plugs: Readonly<{ passesMm: readonly number[]; stopsMm: readonly number[] }>,
): PlugBracket {
  const passes = sortedDiameters(plugs.passesMm);
  const stops = sortedDiameters(plugs.stopsMm);
  const largestPass = passes.at(-1) ?? Number.NEGATIVE_INFINITY;
  const smallestStop = stops[0] ?? Number.POSITIVE_INFINITY;
  const contradictions = passes.flatMap((passedMm) =>
    stops.filter((stoppedMm) => stoppedMm <= passedMm).map((stoppedMm) => ({ passedMm, stoppedMm })),
  );
  return {
    lowMm: passes.findLast((mm) => mm < smallestStop) ?? null,
    highMm: stops.find((mm) => mm > largestPass) ?? null,
    contradictions,
  };
}

function sortedDiameters(diametersMm: readonly number[]): readonly number[] {
  for (const mm of diametersMm)
    if (!Number.isFinite(mm) || mm <= 0)
      throw new RangeError(`a plug's diameter must be a number above 0; got ${mm}; read it with readLength`);
  return [...new Set(diametersMm)].sort((one, other) => one - other);
}
