import type { Taxonomy } from "../taxonomy";

/**
 * Similarity of two ids of a taxonomy: 2 depth(common ancestor) / (depth(a) + depth(b)), the root at depth 1.
 * Ids that share only the root are a little alike still, the less the deeper they stand.
 *
 * @returns over 0 to 1; symmetric; 1 only for an id with itself.
 * @throws RangeError when an id is not in the taxonomy.
 * Source: Wu & Palmer 1994, section 4 (depths counted in nodes).
 */
export function taxonomySimilarity(taxonomy: Taxonomy, a: string, b: string): number {
  const shared = taxonomy.depth(taxonomy.lowestCommonAncestor(a, b));
  return (2 * shared) / (taxonomy.depth(a) + taxonomy.depth(b));
}
