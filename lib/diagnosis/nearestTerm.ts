import { editDistance } from "../document/editDistance";

/** Shorter terms are taken as they stand: one slip would make them any other. */
const shortest = 5;
/** Terms of so many letters may have two slips, shorter ones one. */
const twoSlips = 8;

/**
 * Finds the term that somebody probably meant to type: with the same first letter, a slip or two away.
 *
 * @returns the nearest of `known`, the first where several are as near; undefined where none is, and for a term with digits
 * @example nearestTerm("spindel", ["spin", "spindle"]) // "spindle"
 */
export function nearestTerm(term: string, known: Iterable<string>): string | undefined {
  if (term.length < shortest || /\d/.test(term)) return undefined;
  let best: string | undefined;
  let least = (term.length < twoSlips ? 1 : 2) + 1;
  for (const candidate of known) {
    if (candidate[0] !== term[0] || candidate.length < shortest - 1) continue;
    const distance = editDistance(term, candidate, least - 1);
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}
