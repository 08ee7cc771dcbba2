import { mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { realDisk } from "@/lib/casebook/keeping/disk";
import { findMissingPhotos } from "@/lib/casebook/photos/findMissingPhotos";
import { keepPhoto } from "@/lib/casebook/photos/keepPhoto";
import { thumbOf } from "@/lib/casebook/photos/photo";
import { photosPlace } from "@/lib/casebook/photos/photosPlace";
import { preparePhoto } from "@/lib/casebook/photos/preparePhoto";
import { readPhoto } from "@/lib/casebook/photos/readPhoto";
import { readCase } from "@/lib/casebook/readCase";
import { formatProblem } from "@/lib/document/contentProblem";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { makeCase } from "@/tests/fixtures/makeCase";
import { sideways } from "@/tests/fixtures/pictures";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { failingDisk } from "../keeping/keepingFixture";

async function photo(name = "horn.jpg") {
  const made = await preparePhoto(await sideways(), name);
  if (made.kind !== "made") throw new Error(made.received);
  return made;
}

describe("a photo that is kept", () => {
  it("lies in both sizes under the case's id and a name of its content, whatever it was called", async () => {
    const content = temporaryFolder();
    const made = await photo("../../../tmp/x/../horn.jpg");
    expect(keepPhoto(made, photosPlace(content, "24-001"), "a")).toBeUndefined();
    expect(readdirSync(content)).toEqual(["photos"]);
    expect(readdirSync(join(content, "photos"))).toEqual(["24-001"]);
    expect(readdirSync(photosPlace(content, "24-001"))).toEqual([made.file, thumbOf(made.file)].sort());
    expect(readFileSync(join(photosPlace(content, "24-001"), made.file))).toEqual(made.large);
  });

  it("is there once however often it is sent, and is made whole where half of it was lost", async () => {
    const folder = photosPlace(temporaryFolder(), "24-001");
    const made = await photo();
    keepPhoto(made, folder, "a");
    writeFileSync(join(folder, made.file), made.large.subarray(0, 10));
    expect(keepPhoto(made, folder, "b")).toBeUndefined();
    expect(readFileSync(join(folder, made.file))).toEqual(made.large);
    expect(readdirSync(folder)).toHaveLength(2);
  });

  it.each(["ENOSPC", "EACCES"])("is there whole or not at all where the disk says %s", async (code) => {
    const folder = photosPlace(temporaryFolder(), "24-001");
    expect(keepPhoto(await photo(), folder, "a", failingDisk(code))?.received).toBeTruthy();
    expect(readdirSync(folder)).toEqual([]);
    const broken = {
      ...realDisk,
      rename: () => {
        throw Object.assign(new Error(code), { code });
      },
    };
    expect(keepPhoto(await photo(), folder, "a", broken)?.received).toBeTruthy();
    expect(readdirSync(folder)).toEqual([]);
  });

  it("is not written through a link that leads elsewhere", async () => {
    const [content, elsewhere] = [temporaryFolder(), temporaryFolder()];
    mkdirSync(join(content, "photos"));
    symlinkSync(elsewhere, photosPlace(content, "24-001"));
    expect(keepPhoto(await photo(), photosPlace(content, "24-001"), "a")).toBeDefined();
    expect(readdirSync(elsewhere)).toEqual([]);
  });
});

it.each(["../24-001", "24-001/..", "", ".", "24 001", "/etc"])(
  "no folder is built from the id '%s'",
  (id) => {
    expect(() => photosPlace("/content", id)).toThrow("id must be");
  },
);

describe("a photo that is asked for", () => {
  async function kept() {
    const content = temporaryFolder();
    const made = await photo();
    keepPhoto(made, photosPlace(content, "24-001"), "a");
    return { content, made, kase: makeCase({ id: "24-001", photos: [{ file: made.file }] }) };
  }

  it("comes in the size that was asked for", async () => {
    const { content, made, kase } = await kept();
    expect(readPhoto(kase, content, made.file)).toEqual(made.large);
    expect(readPhoto(kase, content, thumbOf(made.file))).toEqual(made.thumb);
  });

  it("is not given where the case does not name it, though it lies there", async () => {
    const { content, made, kase } = await kept();
    expect(readPhoto({ ...kase, photos: [] }, content, made.file)).toBeUndefined();
    expect(readPhoto({ id: kase.id }, content, made.file)).toBeUndefined();
  });

  it.each(["../24-001.md", "..%2f24-001.md", "", ".", "/etc/passwd", "constructor"])(
    "'%s' leads nowhere",
    async (asked) => {
      const { content, kase } = await kept();
      expect(readPhoto(kase, content, asked)).toBeUndefined();
    },
  );

  it("is not given where another kind of file was put in its place", async () => {
    const { content, made, kase } = await kept();
    writeFileSync(join(photosPlace(content, "24-001"), made.file), "<svg onload='alert(1)'/>");
    expect(readPhoto(kase, content, made.file)).toBeUndefined();
  });

  it("is not given through a link", async () => {
    const { content, made, kase } = await kept();
    const path = join(photosPlace(content, "24-001"), made.file);
    writeFileSync(join(content, "secret"), "secret");
    rmSync(path);
    symlinkSync(join(content, "secret"), path);
    expect(readPhoto(kase, content, made.file)).toBeUndefined();
  });
});

describe("the content check", () => {
  it("names a photo that is not there with file, line and field, and says nothing of one that is", async () => {
    const content = temporaryFolder();
    const cases = join(content, "cases");
    mkdirSync(cases);
    const made = await photo();
    const text = change(
      goodCase,
      "path:\n",
      `photos:\n  - { file: ${made.file}, caption: the bow }\n  - { file: ${"0".repeat(32)}.jpg }\npath:\n`,
    );
    writeFileSync(join(cases, "24-001.md"), text);
    const { case: kase } = readCase(text, "24-001.md", smallVocabulary);
    if (!kase) throw new Error("the case must hold");
    keepPhoto(made, photosPlace(content, "24-001"), "a");
    const problems = findMissingPhotos([kase], { content, cases });
    expect(problems.map(formatProblem)).toEqual([
      `24-001.md:11 photos.1.file: found '${"0".repeat(32)}.jpg', which is not in photos/24-001 in both its sizes; write the name of a photo that is there, or put its files back`,
    ]);
  });

  it.each([
    "../x.jpg",
    "horn.jpg",
    `${"0".repeat(32)}.JPG`,
    `${"0".repeat(32)}.jpg\n`,
    `a/${"0".repeat(32)}.jpg`,
  ])("a case that names '%s' is refused", (file) => {
    const text = change(goodCase, "path:\n", `photos:\n  - { file: ${JSON.stringify(file)} }\npath:\n`);
    expect(readCase(text, "24-001.md", smallVocabulary).problems[0]?.field).toBe("photos.0.file");
  });
});
