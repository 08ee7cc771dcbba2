import type { WordPostings } from "./wordPostings";

/**
 * Lays postings out as bytes: the length of a head, the head (JSON: everything but the large arrays), then the entries of
 * all terms one after another and the lengths, as whole numbers of four bytes in the machine's own order.
 *
 * @returns what `unpackPostings` reads back
 */
export function packPostings(postings: WordPostings): Uint8Array {
  const { boosts, ids, free, terms, lengthTotals } = postings;
  const keys = ids.length * boosts.length;
  const head = new TextEncoder().encode(
    JSON.stringify({
      boosts,
      ids: ids.map((id) => id ?? null),
      free,
      lengthTotals,
      terms: [...terms].map(([term, { length, texts, textsByField }]) => [term, length, texts, textsByField]),
    }),
  );
  const headRoom = Math.ceil(head.length / 4) * 4;
  const pairs = [...terms.values()].reduce((sum, { length }) => sum + length, 0);
  const bytes = new Uint8Array(4 + headRoom + 8 * pairs + 4 * keys);
  new Uint32Array(bytes.buffer, 0, 1)[0] = head.length;
  bytes.set(head, 4);
  const numbers = new Int32Array(bytes.buffer, 4 + headRoom);
  let at = 0;
  for (const { entries, length } of terms.values()) {
    numbers.set(entries.subarray(0, 2 * length), at);
    at += 2 * length;
  }
  numbers.set(postings.lengths.subarray(0, keys), at);
  return bytes;
}
