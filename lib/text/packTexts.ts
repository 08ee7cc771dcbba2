import { packPostings } from "./postings/packPostings";
import type { TextIndex } from "./textIndex";

/**
 * Lays a text index out as bytes: a line of JSON with the marks of the cases by number, then the packed postings.
 *
 * @param marks by id what stands for a case as it was indexed, such as its file's hash; a case without one is indexed anew
 * when the bytes are read back
 * @returns what `recallTexts` reads back
 */
export function packTexts({ words }: TextIndex, marks: ReadonlyMap<string, string>): Uint8Array {
  const head = new TextEncoder().encode(
    `${JSON.stringify(words.ids.map((id = "") => marks.get(id) ?? null))}\n`,
  );
  const packed = packPostings(words);
  const bytes = new Uint8Array(head.length + packed.length);
  bytes.set(head);
  bytes.set(packed, head.length);
  return bytes;
}
