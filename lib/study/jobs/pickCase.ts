/**
 * Picks the case for one turn of a sitting: the cases stand in an order that the seed alone decides, so none comes twice
 * before all have come. A case that joins the casebook meanwhile slips in somewhere and leaves the others in their order.
 *
 * @param ids of the cases to pick from, in any order
 * @param seed any whole number, drawn once a sitting
 * @param turn 0 for the first case of the sitting; past the last one it begins again
 * @returns undefined where there is none to pick
 * @example pickCase(["a", "b"], 7, 0) !== pickCase(["a", "b"], 7, 1) // true
 */
export function pickCase(ids: readonly string[], seed: number, turn: number): string | undefined {
  if (ids.length === 0) return undefined;
  const order = ids
    .map((id) => ({ id, place: scatter(`${seed} ${id}`) }))
    .sort((a, b) => a.place - b.place || (a.id < b.id ? -1 : 1));
  return order[turn % order.length]?.id;
}

/**
 * Spreads texts evenly over 0..2^32 - 1, the same every time.
 * Source: FNV-1a (Fowler, Noll & Vo), then the last mixing of MurmurHash3 (Appleby), so that texts alike but for a letter fall far apart.
 */
function scatter(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}
