import { z } from "zod";
import type { TermPostings, WordPostings } from "./wordPostings";

const count = z.int().min(0);
const headSchema = z.object({
  boosts: z.array(z.number()),
  ids: z.array(z.string().nullable()),
  free: z.array(count),
  lengthTotals: z.array(count),
  terms: z.array(z.tuple([z.string(), count, count, z.array(count)])),
});

/**
 * Reads back what `packPostings` laid out. That the bytes are whole is for the caller to see to.
 *
 * @throws RangeError, SyntaxError or ZodError when the bytes are none of that kind or too few
 */
export function unpackPostings(bytes: Uint8Array): WordPostings {
  // Views of whole numbers must begin at a multiple of four. A Buffer's own slice would be no copy.
  const whole = bytes.byteOffset % 4 === 0 ? bytes : new Uint8Array(bytes);
  if (whole.length < 4)
    throw new RangeError(`packed postings must have a head; got ${whole.length} bytes; build them anew`);
  const headLength = new Uint32Array(whole.buffer, whole.byteOffset, 1)[0] ?? 0;
  const text = new TextDecoder("utf-8", { fatal: true }).decode(whole.subarray(4, 4 + headLength));
  const { boosts, ids, free, lengthTotals, terms } = headSchema.parse(JSON.parse(text));
  const headRoom = Math.ceil(headLength / 4) * 4;
  const entryCount = 2 * terms.reduce((sum, [, length]) => sum + length, 0);
  const needed = 4 + headRoom + 4 * (entryCount + ids.length * boosts.length);
  if (whole.length !== needed) {
    throw new RangeError(`packed postings must have ${needed} bytes; got ${whole.length}; build them anew`);
  }
  const from = whole.byteOffset + 4 + headRoom;
  const entries = new Int32Array(whole.buffer, from, entryCount);
  const lengths = new Uint32Array(whole.buffer, from + 4 * entryCount, ids.length * boosts.length);
  let at = 0;
  const lists = new Map<string, TermPostings>();
  for (const [term, length, texts, textsByField] of terms) {
    lists.set(term, { entries: entries.subarray(at, at + 2 * length), length, texts, textsByField });
    at += 2 * length;
  }
  return {
    boosts,
    ids: ids.map((id) => id ?? undefined),
    numberOf: new Map(ids.flatMap((id, number) => (id === null ? [] : [[id, number] as const]))),
    free,
    terms: lists,
    lengths,
    lengthTotals,
  };
}
