import { z } from "zod";

/** Arrays that can be packed. */
export type PackedArray = Uint8Array | Uint16Array | Int32Array | Float64Array;

const makers = {
  Uint8Array: (buffer: ArrayBufferLike, from: number, length: number) => new Uint8Array(buffer, from, length),
  Uint16Array: (buffer: ArrayBufferLike, from: number, length: number) =>
    new Uint16Array(buffer, from, length),
  Int32Array: (buffer: ArrayBufferLike, from: number, length: number) => new Int32Array(buffer, from, length),
  Float64Array: (buffer: ArrayBufferLike, from: number, length: number) =>
    new Float64Array(buffer, from, length),
} as const;
const bytesOf = { Uint8Array: 1, Uint16Array: 2, Int32Array: 4, Float64Array: 8 } as const;
const kindSchema = z.enum(["Uint8Array", "Uint16Array", "Int32Array", "Float64Array"]);
const headSchema = z.object({ head: z.unknown(), arrays: z.array(z.tuple([kindSchema, z.int().min(0)])) });

/** Every array begins at a multiple of the widest number's bytes. */
const grain = 8;
const roomFor = (bytes: number) => Math.ceil(bytes / grain) * grain;

/**
 * Lays a head and arrays out as bytes: the length of the head in four bytes, the head as JSON, then the arrays, in the
 * machine's own order of bytes.
 *
 * @param head whatever JSON holds
 * @returns what `unpackArrays` reads back
 */
export function packArrays(head: unknown, arrays: readonly PackedArray[]): Uint8Array {
  const kinds = arrays.map((array) => [kindOf(array), array.length]);
  const text = new TextEncoder().encode(JSON.stringify({ head, arrays: kinds }));
  const start = roomFor(4 + text.length);
  const bytes = new Uint8Array(arrays.reduce((sum, { byteLength }) => sum + roomFor(byteLength), start));
  new Uint32Array(bytes.buffer, 0, 1)[0] = text.length;
  bytes.set(text, 4);
  let at = start;
  for (const { buffer, byteOffset, byteLength } of arrays) {
    bytes.set(new Uint8Array(buffer, byteOffset, byteLength), at);
    at += roomFor(byteLength);
  }
  return bytes;
}

/**
 * Reads back what `packArrays` laid out. That the bytes are whole is for the caller to see to.
 *
 * @throws RangeError, SyntaxError or ZodError when the bytes are none of that kind or too few
 */
export function unpackArrays(bytes: Uint8Array): Readonly<{ head: unknown; arrays: readonly PackedArray[] }> {
  // A copy of its own begins at a multiple of the widest number. A Buffer's own slice would be no copy.
  const whole = bytes.byteOffset % grain === 0 ? bytes : new Uint8Array(bytes);
  const length = new Uint32Array(whole.buffer, whole.byteOffset, whole.length < 4 ? -1 : 1)[0] ?? 0;
  const text = new TextDecoder("utf-8", { fatal: true }).decode(whole.subarray(4, 4 + length));
  const { head, arrays } = headSchema.parse(JSON.parse(text));
  let at = roomFor(4 + length);
  const read = arrays.map(([kind, count]) => {
    const from = at;
    at += roomFor(count * bytesOf[kind]);
    if (at > whole.length) {
      throw new RangeError(`packed arrays must have ${at} bytes; got ${whole.length}; work them out anew`);
    }
    return makers[kind](whole.buffer, whole.byteOffset + from, count);
  });
  return { head, arrays: read };
}

function kindOf(array: PackedArray): z.infer<typeof kindSchema> {
  if (array instanceof Uint8Array) return "Uint8Array";
  if (array instanceof Uint16Array) return "Uint16Array";
  return array instanceof Int32Array ? "Int32Array" : "Float64Array";
}
