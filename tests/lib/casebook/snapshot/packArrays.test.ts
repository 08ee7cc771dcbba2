import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { packArrays, unpackArrays } from "@/lib/casebook/snapshot/packArrays";

const anyArray = fc.oneof(
  fc.uint8Array({ maxLength: 9 }),
  fc.uint16Array({ maxLength: 9 }),
  fc.int32Array({ maxLength: 9 }),
  fc.float64Array({ maxLength: 9 }),
);

describe("arrays packed as bytes", () => {
  it("come back as they were, with their head, wherever the bytes begin", () => {
    fc.assert(
      fc.property(
        fc.json(),
        fc.array(anyArray, { maxLength: 6 }),
        fc.nat({ max: 9 }),
        (json, arrays, room) => {
          const head: unknown = JSON.parse(json);
          const packed = packArrays(head, arrays);
          const moved = new Uint8Array(room + packed.length);
          moved.set(packed, room);
          expect(unpackArrays(moved.subarray(room))).toStrictEqual({
            head: JSON.parse(JSON.stringify(head)),
            arrays,
          });
        },
      ),
    );
  });

  it("are refused where bytes are missing, or are of another kind", () => {
    const packed = packArrays({ a: 1 }, [new Int32Array([1, 2]), new Float64Array([0.5])]);
    for (let length = 0; length < packed.length; length += 1) {
      expect(() => unpackArrays(packed.slice(0, length))).toThrow();
    }
    expect(() => unpackArrays(new TextEncoder().encode("no arrays at all"))).toThrow();
  });
});
