import { deflateSync } from "node:zlib";
import { zipSync } from "fflate";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { photoFileSchema } from "@/lib/casebook/photos/photo";
import { photoLimits } from "@/lib/casebook/photos/photoLimits";
import { preparePhoto } from "@/lib/casebook/photos/preparePhoto";
import { handmadePng, plain, sideways } from "@/tests/fixtures/pictures";

async function made(bytes: Uint8Array, name = "horn.jpg") {
  const photo = await preparePhoto(bytes, name);
  if (photo.kind !== "made") throw new Error(`a photo must be made; got ${photo.received}`);
  return photo;
}
async function refused(bytes: Uint8Array, name = "horn.jpg") {
  const photo = await preparePhoto(bytes, name);
  if (photo.kind !== "refused") throw new Error("a photo must be refused; it was made");
  return photo;
}
const noise = (width: number, height: number) =>
  sharp({
    create: {
      width,
      height,
      channels: 3,
      background: "#000",
      noise: { type: "gaussian", mean: 128, sigma: 60 },
    },
  })
    .jpeg()
    .toBuffer();

describe("a photo that is taken", () => {
  it("carries no EXIF, no position and no word of its camera any more", async () => {
    const sent = await sideways();
    const told = (await sharp(sent).metadata()).exif;
    // Tag 8825 leads to the position (Exif 2.32, 4.6.3), 51 degrees 30 minutes as rationals.
    expect([told?.includes("8825", 0, "hex"), told?.includes("2588", 0, "hex")]).toContain(true);
    expect(sent.includes("Nobody")).toBe(true);
    const { large, thumb } = await made(sent);
    for (const bytes of [large, thumb]) {
      const { exif, xmp, iptc, icc, orientation } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc, icc, orientation]).toEqual(Array(5).fill(undefined));
      for (const word of ["Exif", "Nobody", "GPS", "http"]) expect(bytes.includes(word)).toBe(false);
      // JPEG (ITU-T T.81, B.2.4.6; EXIF stands in APP1): no application segment but JFIF's own.
      expect(segmentsOf(bytes).filter((marker) => marker > 0xe0 && marker <= 0xef)).toEqual([]);
      expect(segmentsOf(bytes)).not.toContain(0xfe);
    }
  });

  it("stands upright: what was on the left of a camera turned by EXIF 6 is at the top", async () => {
    const { large } = await made(await sideways());
    const { data, info } = await sharp(large).raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([40, 60]);
    const at = (x: number, y: number) => [
      ...data.subarray(3 * (y * info.width + x), 3 * (y * info.width + x) + 3),
    ];
    const [top, bottom] = [at(20, 10), at(20, 50)];
    expect([top[0], bottom[2]].every((value) => (value ?? 0) > 220)).toBe(true);
    expect([top[2], bottom[0]].every((value) => (value ?? 255) < 40)).toBe(true);
  });

  it("comes in two sizes, never larger than it was", async () => {
    const big = await made(await noise(2400, 1800));
    const sides = async (bytes: Buffer) => {
      const { width, height } = await sharp(bytes).metadata();
      return [width, height];
    };
    expect(await sides(big.large)).toEqual([1600, 1200]);
    expect(await sides(big.thumb)).toEqual([480, 360]);
    const small = await made(await plain("png"));
    expect(await sides(small.large)).toEqual([40, 30]);
  });

  it.each(["jpeg", "png", "webp", "avif"] as const)("may be %s, whatever it is called", async (format) => {
    const { file, large } = await made(await plain(format), "notes.txt");
    expect(photoFileSchema.safeParse(file).success).toBe(true);
    expect((await sharp(large).metadata()).format).toBe("jpeg");
  });

  it("has the same name when it is sent again, and another one when it is another photo", async () => {
    const [one, same, other] = [await noise(60, 40), await plain("png"), await plain("png", 41)];
    expect((await made(one, "a.jpg")).file).toBe((await made(one, "../../etc/b.png")).file);
    expect((await made(same)).file).not.toBe((await made(other)).file);
  });
});

describe("what is no photo is refused by its content, in words that say what it is", () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script></svg>';
  it.each([
    ["SVG", Buffer.from(svg), /no picture|XML/],
    ["SVG with its declaration", Buffer.from(`<?xml version="1.0"?>${svg}`), /XML data/],
    ["HTML", Buffer.from("<!doctype html><script>alert(1)</script>"), /no picture/],
    ["ZIP", Buffer.from(zipSync({ "a.txt": Buffer.from("a") })), /ZIP data/],
    ["PDF", Buffer.from("%PDF-1.7\n%\u00e2\u00e3\n1 0 obj\n<<>>\nendobj\n"), /PDF data/],
    ["text", Buffer.from("a photo of the bell"), /no picture/],
    ["nothing", Buffer.alloc(0), /empty/],
  ])("%s", async (_, bytes, words) => {
    const { received, expected } = await refused(bytes);
    expect(received).toMatch(/^'horn\.jpg', which /);
    expect(received).toMatch(words);
    expect(expected).toBe("a photo: JPEG, PNG, WebP or AVIF");
  });

  it.each(["gif", "tiff"] as const)("%s, though it is a picture", async (format) => {
    expect((await refused(await plain(format))).received).toMatch(/GIF data|TIF data/);
  });

  it("HEIC that cannot be opened is told from a damaged photo", async () => {
    const heic = Buffer.concat([
      Buffer.from([0, 0, 0, 24]),
      Buffer.from("ftypheic\0\0\0\0mif1heic", "latin1"),
      Buffer.alloc(64),
    ]);
    const { received, expected } = await refused(heic, "horn.heic");
    expect(received).toContain("HEIC");
    expect(expected).toContain("JPEG");
  });

  it("a JPEG that was cut off", async () => {
    const whole = await noise(200, 150);
    expect((await preparePhoto(whole, "a.jpg")).kind).toBe("made");
    for (const part of [0.02, 0.3, 0.9]) {
      const { received } = await refused(whole.subarray(0, Math.floor(whole.length * part)));
      expect(received).toContain("damaged or cut off");
    }
  });

  it("a JPEG's head with a page behind it: what is kept is the picture alone, or nothing", async () => {
    const page = Buffer.from("<script>alert(1)</script>");
    const { large } = await made(Buffer.concat([await noise(60, 40), page]));
    expect(large.includes("script")).toBe(false);
  });

  it("a file over the limit, before it is looked into", async () => {
    const { received, expected } = await refused(Buffer.alloc(photoLimits.bytes + 1));
    expect(received).toContain("26 MB");
    expect(expected).toContain("25 MB");
  });
});

describe("a bomb", () => {
  it("of 20,000 by 20,000 pixels in a small file is refused by its size", async () => {
    const bomb = handmadePng(20_000, 20_000);
    expect(bomb.length).toBeLessThan(100_000);
    const before = process.memoryUsage().rss;
    const { received, expected } = await refused(bomb, "bomb.png");
    expect(received).toContain("20000 by 20000 pixels");
    expect(expected).toContain("64 million pixels");
    // Unpacked it would take 400 million bytes at the least.
    expect(process.memoryUsage().rss - before).toBeLessThan(200_000_000);
  });

  it("is not unpacked for it: one whose picture is nonsense gets the very same answer", async () => {
    const sound = await refused(handmadePng(20_000, 20_000), "bomb.png");
    expect(await refused(handmadePng(20_000, 20_000, Buffer.from("nonsense")), "bomb.png")).toEqual(sound);
    // And nonsense that is small is found out by being unpacked.
    expect((await refused(handmadePng(20, 20, Buffer.from("nonsense")))).received).toContain("damaged");
    expect((await refused(handmadePng(20, 20, deflateSync(Buffer.alloc(7))))).received).toContain("damaged");
    expect((await preparePhoto(handmadePng(20, 20), "a.png")).kind).toBe("made");
  });
});

it("a name is shown in a refusal without its control characters, and not at any length", async () => {
  const { received } = await refused(Buffer.from("x"), `../../\u0000\u202e${"a".repeat(500)}.jpg`);
  expect(received).toMatch(/^'\.\.\/\.\.\/a{53}…', which/);
});

/** The markers of a JPEG's segments up to the picture itself. */
function segmentsOf(bytes: Buffer): number[] {
  const markers: number[] = [];
  for (let at = 2; at < bytes.length && bytes[at] === 0xff; at += 2 + bytes.readUInt16BE(at + 2)) {
    const marker = bytes[at + 1] ?? 0;
    markers.push(marker);
    if (marker === 0xda) break;
  }
  return markers;
}
