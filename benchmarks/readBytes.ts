import type { CompiledQuery, Term } from "@/lib/similarity/compileQuery";

/** A stretch of memory as whole numbers of four bytes: read fastest one after another. */
export type Stretch = Int32Array;

/** Everything that scoring a query has to read: the columns that it asks about, and the posting lists of its findings. */
export const bytesAsked = ({ terms }: CompiledQuery, rowCount: number): Stretch[] =>
  terms.flatMap((term) => bytesOf(term, rowCount));

/** Reads them all and does nothing else; the sum keeps the reading from being left out. */
export function readBytes(stretches: readonly Stretch[]): number {
  let [a, b, c, d] = [0, 0, 0, 0];
  for (const words of stretches) {
    const whole = words.length - (words.length % 4);
    for (let at = 0; at < whole; at += 4) {
      a = (a + (words[at] ?? 0)) | 0;
      b = (b + (words[at + 1] ?? 0)) | 0;
      c = (c + (words[at + 2] ?? 0)) | 0;
      d = (d + (words[at + 3] ?? 0)) | 0;
    }
  }
  return a ^ b ^ c ^ d;
}

function bytesOf(term: Term, rowCount: number): Stretch[] {
  switch (term.kind) {
    case "coded":
      return [asWords(term.column.codes, rowCount)];
    case "numeric":
      return [asWords(term.column.low, rowCount), asWords(term.column.high, rowCount)];
    case "finding":
      return [asWords(term.list.rows, term.list.length), asWords(term.list.outcomes, term.list.length)];
    case "text":
      return [asWords(term.similarityByRow, rowCount)];
  }
}

function asWords(
  { buffer, byteOffset, BYTES_PER_ELEMENT }: Uint8Array | Uint16Array | Int32Array | Float64Array,
  length: number,
): Stretch {
  return new Int32Array(buffer, byteOffset, Math.floor((length * BYTES_PER_ELEMENT) / 4));
}
