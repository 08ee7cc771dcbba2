import { deflateRawSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { crc32 } from "@/lib/casebook/archive/crc32";
import { openArchive } from "@/lib/casebook/archive/openArchive";
import { ZipFault } from "@/lib/casebook/archive/zipFault";
import { type RawFile, rawZip } from "@/tests/fixtures/rawZip";

const words = Buffer.from("words");
const zeros = Buffer.alloc(3_000_000);

/** Opens a zip of these files and reads them all; gives what it was refused for. */
function refusal(zip: Uint8Array): string {
  try {
    const { cases, photos } = openArchive(zip);
    for (const { read } of [...cases, ...photos]) read();
  } catch (error) {
    if (error instanceof ZipFault) return error.message;
    throw error;
  }
  return "";
}
const refusalOf = (...files: readonly RawFile[]) => refusal(rawZip(files));

describe("an archive of a casebook", () => {
  it("gives its cases and photos, stored or deflated, to the byte", () => {
    const zip = rawZip([
      { name: "cases/" },
      { name: "cases/24-001.md", bytes: words },
      {
        name: "photos/24-001/Bell stem 1.JPG",
        bytes: deflateRawSync(words),
        method: 8,
        size: 5,
        crc: crc32(words),
      },
    ]);
    const { cases, photos } = openArchive(zip);
    expect(cases.map(({ id, read }) => [id, Buffer.from(read()).toString()])).toEqual([["24-001", "words"]]);
    expect(photos.map(({ segments, read }) => [segments, Buffer.from(read()).toString()])).toEqual([
      [["24-001", "Bell stem 1.JPG"], "words"],
    ]);
  });

  it.each([
    "../24-001.md",
    "cases/../../24-001.md",
    "cases/../24-001.md",
    "/etc/24-001.md",
    "C:/cases/24-001.md",
    "C:\\cases\\24-001.md",
    "..\\cases\\24-001.md",
    "photos/../cases/24-001.md",
    "photos/a/../../../b.jpg",
  ])("is refused for the path %s, which leads out of it", (name) => {
    expect(refusalOf({ name, bytes: words })).toContain("a path that leads out of the casebook");
  });

  it.each([
    "cases/a/24-001.md",
    "cases/24-001.txt",
    "cases/.md",
    "cases/24 001.md",
    "cases/24-001.md\0.jpg",
    "photos/.hidden.jpg",
    "photos/a.svg",
    "photos/a.html",
    "photos/con.jpg",
    "photos/a.jpg.",
    "photos/a /b.jpg",
    "photos//b.jpg",
    "photos/a/b/c/d/e.jpg",
    "photos",
    "vocabulary/checks.yaml",
    "README.md",
    "",
    "./cases/24-001.md",
  ])("is refused for the path '%s', which no export writes", (name) => {
    expect(refusalOf({ name, bytes: words })).not.toBe("");
  });

  it("is refused for a link, for a locked file and for a name that stands twice, capitals or not", () => {
    expect(refusalOf({ name: "photos/a.jpg", bytes: Buffer.from("/etc/passwd"), mode: 0o120777 })).toContain(
      "a link to elsewhere",
    );
    expect(refusalOf({ name: "cases/a.md", bytes: words, flags: 1 })).toContain("a password");
    expect(
      refusalOf({ name: "photos/a.jpg", bytes: words }, { name: "photos/A.jpg", bytes: words }),
    ).toContain("photos/A.jpg: found this name a second time");
  });

  it("is refused for a file that swells, or whose size is told too small or too great", () => {
    const packed = deflateRawSync(zeros);
    const swelling = { name: "photos/a.jpg", bytes: packed, method: 8 };
    expect(refusalOf({ ...swelling, size: zeros.length })).toContain("swells from");
    expect(refusalOf({ ...swelling, size: 1000 })).toContain("more bytes than it says it holds");
    expect(refusalOf({ name: "cases/a.md", bytes: words, size: 4_000_001 })).toContain("bytes unpacked");
    expect(refusalOf({ name: "cases/a.md", bytes: words, size: 6 })).toContain("check sum");
  });

  it("is refused for bytes of another check sum, an unknown method, another name at the file itself", () => {
    expect(refusalOf({ name: "cases/a.md", bytes: words, crc: 1 })).toContain("check sum");
    expect(refusalOf({ name: "cases/a.md", bytes: words, method: 12 })).toContain("method 12");
    expect(refusalOf({ name: "cases/a.md", bytes: words, method: 8 })).toContain("cannot be read");
    expect(refusalOf({ name: "cases/a.md", localName: "cases/b.md", bytes: words })).toContain(
      "another name",
    );
  });

  it("is refused where two files share their bytes", () => {
    const shared = { name: "cases/b.md", bytes: words, start: 0 };
    expect(refusalOf({ name: "cases/a.md", bytes: words }, shared)).toContain("lies over another");
  });

  it("is refused cut short anywhere, and with bytes behind it", () => {
    const zip = rawZip([{ name: "cases/a.md", bytes: words }]);
    for (let length = 0; length < zip.length; length++) expect(refusal(zip.subarray(0, length))).not.toBe("");
    expect(refusal(Buffer.concat([zip, Buffer.from("x")]))).not.toBe("");
    expect(refusal(zip)).toBe("");
  });
});
