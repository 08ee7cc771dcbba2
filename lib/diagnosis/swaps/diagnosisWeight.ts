import { type SwapAspect, swapAspects } from "./swapObservation";
import type { SwapPair } from "./swapPairs";

/** Chance of any one part being at fault before anything was tried; only its smallness matters. As in de Kleer & Williams 1987. */
const faultPrior = 0.01;
/** How often a part at fault still runs free with another partner, a roomy one. Chosen; from the bench, not measured. */
export const freeThoughFaulty = 0.1;
/** How often one fault binds at a different place, way or turn with each partner. Chosen; from the bench, not measured. */
const aspectMoves = 0.3;

/**
 * How likely a diagnosis is, up to a common factor.
 *
 *   prior^(parts at fault) x 0.1^(free pairs with a part at fault) x 0.3^(aspects that differ among the partners of a part that alone binds with them)
 *
 * A free pair weighs against both its members alike, wherever else they stuck: it shows that the two suit each other, not that either
 * is sound, since a thick piston may run in a roomy casing. So it makes a diagnosis less likely and never rules it out.
 *
 * What stays the same whichever partner a part is tried with belongs to that part: the same place in the casing whichever piston
 * is in it, the same way or turn of the piston whichever casing it is in. What changes with the partner speaks against it.
 *
 * @param parts the parts at fault
 * @param pairs all that was seen, from `swapPairs`
 * @returns a weight in 0..1, higher is likelier; 1 for no part when every pair ran free
 */
export function diagnosisWeight(parts: readonly string[], pairs: readonly SwapPair[]): number {
  const freePairs = pairs.filter(({ a, b, free }) => free && (parts.includes(a) || parts.includes(b)));
  const moving = parts.flatMap((part) =>
    swapAspects.filter((aspect) => toldAlone(part, aspect, parts, pairs) > 1),
  );
  const weight =
    faultPrior ** parts.length * freeThoughFaulty ** freePairs.length * aspectMoves ** moving.length;
  // Two free runs weigh as much as a second fault: rounding must not decide between the two.
  return Number(weight.toPrecision(12));
}

/** How many places, ways or turns are told of a part with partners that this diagnosis holds to be sound. */
function toldAlone(
  part: string,
  aspect: SwapAspect,
  parts: readonly string[],
  pairs: readonly SwapPair[],
): number {
  const told = pairs.flatMap(({ a, b, stuck }) => {
    const partner = a === part ? b : b === part ? a : undefined;
    // Only the first of each pair: one pair that binds all along says nothing about the place moving with the partner.
    return partner === undefined || parts.includes(partner) ? [] : stuck[aspect].slice(0, 1);
  });
  return new Set(told).size;
}
