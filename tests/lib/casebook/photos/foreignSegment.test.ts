import fc from "fast-check";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { findForeignSegment } from "@/lib/casebook/photos/foreignSegment";
import { photoSides } from "@/lib/casebook/photos/photoLimits";
import { preparePhoto } from "@/lib/casebook/photos/preparePhoto";
import { plain, sideways } from "@/tests/fixtures/pictures";

async function made(bytes: Buffer) {
  const photo = await preparePhoto(bytes, "horn.jpg");
  if (photo.kind !== "made") throw new Error(`a photo must be made; got ${photo.received}`);
  return photo;
}
const isPlain = (bytes: Uint8Array, side: number = photoSides.large) =>
  findForeignSegment(bytes, side) === undefined;
/** A segment of a JPEG: marker, length with its own two bytes, data (ITU-T T.81, B.1.1.4). */
const segment = (marker: number, data: string) => {
  const head = Buffer.from([0xff, marker, 0, data.length + 2]);
  return Buffer.concat([head, Buffer.from(data, "latin1")]);
};

describe("a JPEG is known as the picture alone", () => {
  it("where it was made here, from any format, in both sizes", async () => {
    const sent = [await sideways(), await plain("png", 2000, 900), await plain("webp"), await plain("avif")];
    for (const bytes of sent) {
      const { large, thumb } = await made(bytes);
      expect(isPlain(large)).toBe(true);
      expect(isPlain(thumb, photoSides.thumb)).toBe(true);
    }
  });

  it("not with EXIF, a profile, a comment or any other application's segment, wherever it stands", async () => {
    const { large } = await made(await plain("png"));
    expect(findForeignSegment(await sideways(), photoSides.large)).toContain("beside the picture");
    const profiled = await sharp(large).withIccProfile("srgb").jpeg().toBuffer();
    expect(isPlain(profiled)).toBe(false);
    for (const marker of [0xfe, ...Array.from({ length: 16 }, (_, at) => 0xe0 + at)]) {
      const added = segment(marker, "Exif\0\0 51 30 N");
      for (const at of [2, large.length - 2])
        expect(isPlain(Buffer.concat([large.subarray(0, at), added, large.subarray(at)]))).toBe(false);
    }
  });

  it("not where it is larger than it would be made, cut off, or followed by more", async () => {
    const { large } = await made(await plain("png", 1600, 900));
    expect(findForeignSegment(large, photoSides.thumb)).toBe("a picture of 1600 by 900 pixels");
    expect(isPlain(Buffer.concat([large, Buffer.from([0])]))).toBe(false);
    fc.assert(
      fc.property(fc.nat(large.length - 1), (length) => {
        expect(isPlain(large.subarray(0, length))).toBe(false);
      }),
    );
  });

  it("not where it is none, whatever its bytes are", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const head = Buffer.from([0xff, 0xd8, 0xff, 0xd9]);
        expect(isPlain(bytes)).toBe(false);
        expect(isPlain(Buffer.concat([head, bytes]))).toBe(false);
      }),
    );
  });
});
