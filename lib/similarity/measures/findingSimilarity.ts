import { ordinalSimilarity } from "./ordinalSimilarity";

/**
 * Similarity of two outcomes of one finding key: on an ordered scale as `ordinalSimilarity`, otherwise 1 if they are the same and 0 if contrary.
 * A contrary outcome counts against the case: a case that does not know the key gets the expected similarity instead, which is more.
 *
 * @param outcomeA place of the first outcome in the key's list, from 0.
 * @param outcomeB place of the second.
 * @param outcomeCount number of outcomes the key has.
 * @param ordered whether the list is a scale.
 * @returns 0..1; symmetric.
 * @throws RangeError when the key is ordered and a place is not on its scale.
 * Source: Tversky 1977 (contrast of common and distinctive features); Gower 1971.
 */
export function findingSimilarity(
  outcomeA: number,
  outcomeB: number,
  outcomeCount: number,
  ordered: boolean,
): number {
  if (ordered) return ordinalSimilarity(outcomeA, outcomeB, outcomeCount);
  return outcomeA === outcomeB ? 1 : 0;
}
