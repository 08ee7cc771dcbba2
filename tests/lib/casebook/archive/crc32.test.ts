import fc from "fast-check";
import { gzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { crc32 } from "@/lib/casebook/archive/crc32";

describe("the check sum of a file", () => {
  it("is the check value of CRC-32/ISO-HDLC for the digits 1 to 9", () => {
    // Source: Williams 1993, A painless guide to CRC error detection algorithms, section 20 (from memory).
    expect(crc32(Buffer.from("123456789"))).toBe(0xcbf43926);
    expect(crc32(new Uint8Array())).toBe(0);
  });

  it("is the one that a general-purpose library writes behind the same bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const packed = Buffer.from(gzipSync(bytes));
        expect(crc32(bytes)).toBe(packed.readUInt32LE(packed.length - 8));
      }),
    );
  });
});
