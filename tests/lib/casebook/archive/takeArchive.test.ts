import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { listArchiveFiles } from "@/lib/casebook/archive/archiveFiles";
import { openArchive } from "@/lib/casebook/archive/openArchive";
import { packArchive } from "@/lib/casebook/archive/packArchive";
import { takeArchive } from "@/lib/casebook/archive/takeArchive";
import { caseFieldsSchema } from "@/lib/casebook/caseFile";
import { contentFolders } from "@/lib/casebook/files/contentFolder";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { nameOfPhoto } from "@/lib/casebook/photos/nameOfPhoto";
import { thumbOf } from "@/lib/casebook/photos/photo";
import { preparePhoto } from "@/lib/casebook/photos/preparePhoto";
import { writeCase } from "@/lib/casebook/writeCase";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { sideways } from "@/tests/fixtures/pictures";
import { rawZip } from "@/tests/fixtures/rawZip";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { anyFields, anyStory } from "../anyCase";

/** A photo in its two sizes, as a sheet keeps it. */
const photo = await preparePhoto(await sideways(), "horn.jpg");
if (photo.kind !== "made") throw new Error(`a photo must be made; got ${photo.received}`);
const large = `photos/24-001/${photo.file}`;
const thumb = thumbOf(large);

function place(path: string, bytes: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes);
}
const shelf = (content: string) => {
  const folders = contentFolders({ BENCHLORE_CONTENT: content }, () => false);
  return { folders, casebook: loadCasebook(folders.cases, smallVocabulary) };
};
function pack(content: string) {
  const { folders, casebook } = shelf(content);
  const { files, leftOut } = listArchiveFiles(folders, casebook);
  return { zip: Buffer.concat([...packArchive(files)]), leftOut };
}
const take = (zip: Uint8Array, content: string, write = true) =>
  takeArchive(openArchive(zip), { ...shelf(content), vocabulary: smallVocabulary, write, mark: "a" });
const statesOf = (taken: Awaited<ReturnType<typeof take>>) =>
  taken.map(({ path, state }) => `${path} ${state}`);
const bytesIn = (content: string) =>
  Object.fromEntries(
    readdirSync(content, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => join(parentPath, name))
      .sort()
      .map((path) => [path.slice(content.length), readFileSync(path).toString("base64")]),
  );

describe("an archive that is taken in again", () => {
  it("gives every file back to the byte, marks and line ends included, and the photos", async () => {
    const from = temporaryFolder();
    place(join(from, "cases", "24-001.md"), `\uFEFF${goodCase.replaceAll("\n", "\r\n")}`);
    place(join(from, "cases", "24-002.md"), change(goodCase, "24-001", "24-002"));
    place(join(from, large), photo.large);
    place(join(from, thumb), photo.thumb);
    const { zip, leftOut } = pack(from);
    expect(leftOut).toEqual([]);
    const to = temporaryFolder();
    expect(statesOf(await take(zip, to))).toEqual([
      `${large} new`,
      `${thumb} new`,
      "cases/24-001.md new",
      "cases/24-002.md new",
    ]);
    expect(bytesIn(to)).toEqual(bytesIn(from));
    expect(pack(to).zip.equals(zip)).toBe(true);
    expect(statesOf(await take(zip, to)).every((state) => state.endsWith("there already"))).toBe(true);
  });

  it("is read by a general-purpose library as the same files", () => {
    const from = temporaryFolder();
    place(join(from, "cases", "24-001.md"), goodCase);
    place(join(from, large), photo.large);
    const files = unzipSync(pack(from).zip);
    expect(Object.keys(files)).toEqual(["cases/24-001.md", large]);
    expect(Buffer.from(files["cases/24-001.md"] ?? []).toString()).toBe(goodCase);
    expect(Buffer.from(files[large] ?? []).equals(photo.large)).toBe(true);
  });

  it("gives any casebook back", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(anyFields, anyStory), { maxLength: 4 }), async (cases) => {
        const from = temporaryFolder();
        mkdirSync(join(from, "cases"));
        for (const [fields, story] of cases) {
          const sound = caseFieldsSchema.parse(fields);
          place(join(from, "cases", `${sound.id}.md`), writeCase(sound, story));
        }
        const to = temporaryFolder();
        await take(pack(from).zip, to);
        expect(bytesIn(to)).toEqual(bytesIn(from));
        expect([...shelf(to).casebook.cases]).toEqual([...shelf(from).casebook.cases]);
      }),
      { numRuns: 30 },
    );
  });

  it("is only looked at, and nothing is written, until it is to be written", async () => {
    const to = temporaryFolder();
    const zip = rawZip([
      { name: "cases/24-001.md", bytes: Buffer.from(goodCase) },
      { name: large, bytes: photo.large },
    ]);
    expect(statesOf(await take(zip, to, false))).toEqual([`${large} new`, "cases/24-001.md new"]);
    expect(readdirSync(to)).toEqual([]);
  });
});

describe("a lesson in an archive", () => {
  const lesson = "---\nid: first-week\ntitle: The first week\ncases:\n  - 24-001\n---\n\nLook first.\n";

  it("goes along to the byte, after the cases; learners' files stay at home", async () => {
    const from = temporaryFolder();
    place(join(from, "cases", "24-001.md"), goodCase);
    place(join(from, "lessons", "first-week.md"), lesson);
    place(join(from, "lessons", ".revisions", "first-week", "1.md"), "older");
    place(join(from, "learners", "ada-brook.md"), "private");
    const to = temporaryFolder();
    const { zip, leftOut } = pack(from);
    expect(leftOut).toEqual([]);
    expect(statesOf(await take(zip, to))).toEqual(["cases/24-001.md new", "lessons/first-week.md new"]);
    expect(readFileSync(join(to, "lessons", "first-week.md"), "utf8")).toBe(lesson);
    expect(readdirSync(to).sort()).toEqual(["cases", "lessons"]);
    expect(statesOf(await take(zip, to)).every((state) => state.endsWith("there already"))).toBe(true);
  });

  it("overwrites none of the same name, and one that cannot be read is refused with its line", async () => {
    const to = temporaryFolder();
    place(join(to, "lessons", "first-week.md"), lesson.replace("Look first.", "Listen first."));
    const zip = rawZip([
      { name: "lessons/first-week.md", bytes: Buffer.from(lesson) },
      { name: "lessons/second-week.md", bytes: Buffer.from(lesson) },
    ]);
    const taken = await take(zip, to);
    expect(taken).toMatchObject([
      { state: "differs", problems: [{ field: "id", received: "'first-week', which another lesson has" }] },
      { state: "refused", problems: [{ file: "lessons/second-week.md", line: 2, field: "id" }] },
    ]);
    expect(readFileSync(join(to, "lessons", "first-week.md"), "utf8")).toContain("Listen first.");
  });
});

describe("a photo in an archive", () => {
  it("is refused where it is not as it is made here, and nothing of it is kept", async () => {
    const raw = await sideways();
    const to = temporaryFolder();
    const taken = await take(
      rawZip([
        { name: "photos/24-001/horn.jpg", bytes: raw },
        { name: `photos/24-001/${nameOfPhoto(raw)}`, bytes: raw },
        { name: large, bytes: photo.thumb },
        { name: thumb, bytes: Buffer.concat([photo.thumb, Buffer.from("51 30 N")]) },
      ]),
      to,
    );
    const found = taken.flatMap((file) => (file.state === "refused" ? file.problems[0]?.received : file));
    expect(found).toEqual([
      "a picture under a name that no job can give",
      "what a camera or a program writes beside the picture (marker e1)",
      "a picture that is not the one of its name",
      "bytes after the end of the picture",
    ]);
    expect(existsSync(join(to, "photos"))).toBe(false);
  });
});

describe("a file of an archive that cannot be taken in", () => {
  it("leaves what has its name as it was, and does not keep the others out", async () => {
    const to = temporaryFolder();
    place(join(to, "cases", "24-001.md"), change(goodCase, "It was washed", "It was soaked"));
    place(join(to, thumb), "mine");
    const before = bytesIn(to);
    const zip = rawZip([
      { name: thumb, bytes: photo.thumb },
      { name: "photos/b.gif", bytes: Buffer.from("<html>") },
      { name: "cases/24-001.md", bytes: Buffer.from(goodCase) },
      { name: "cases/24-002.md", bytes: Buffer.from(change(goodCase, "cornet", "cornt")) },
      { name: "cases/24-003.md", bytes: Buffer.from(goodCase) },
      { name: "cases/24-004.md", bytes: Buffer.from([0xff, 0xfe, 0x41]) },
      { name: "cases/24-005.md", bytes: Buffer.from(change(goodCase, "24-001", "24-005")) },
    ]);
    const taken = await take(zip, to);
    expect(statesOf(taken)).toEqual([
      `${thumb} differs`,
      "photos/b.gif refused",
      "cases/24-001.md differs",
      "cases/24-002.md refused",
      "cases/24-003.md refused",
      "cases/24-004.md refused",
      "cases/24-005.md new",
    ]);
    expect(bytesIn(to)).toMatchObject(before);
    expect(readdirSync(join(to, "cases"))).toEqual(["24-001.md", "24-005.md"]);
    const faults = taken.flatMap((file) => ("problems" in file ? file.problems : []));
    expect(faults.map(({ received }) => received)).toEqual([
      "another picture of this name in the casebook",
      "a picture under a name that no job can give",
      "'24-001', which another case has",
      "'cornt'",
      "'24-001'",
      "bytes that are not UTF-8",
    ]);
  });

  it("is not written where a link among the photos leads", async () => {
    const [to, elsewhere] = [temporaryFolder(), temporaryFolder()];
    mkdirSync(join(to, "photos"));
    symlinkSync(elsewhere, join(to, "photos", "24-001"));
    const taken = await take(rawZip([{ name: large, bytes: photo.large }]), to);
    expect(statesOf(taken)).toEqual([`${large} refused`]);
    expect(readdirSync(elsewhere)).toEqual([]);
  });

  it("because its bytes are damaged keeps the whole archive out", async () => {
    const to = temporaryFolder();
    const zip = rawZip([
      { name: "cases/24-001.md", bytes: Buffer.from(goodCase) },
      { name: large, bytes: photo.large, crc: 7 },
    ]);
    await expect(take(zip, to)).rejects.toThrow("check sum");
    expect(existsSync(join(to, "cases"))).toBe(false);
  });
});

describe("what does not go into an archive", () => {
  it("is named: broken case files, what is no photo of a job, links", () => {
    const from = temporaryFolder();
    place(join(from, "cases", "24-001.md"), goodCase);
    place(join(from, "cases", "24-002.md"), "broken");
    place(join(from, "photos", "notes.txt"), "words");
    place(join(from, "photos", "stem.jpg"), photo.large);
    place(join(from, "photos", ".hidden"), "words");
    symlinkSync("/etc/hostname", join(from, "photos", "link.jpg"));
    const { zip, leftOut } = pack(from);
    expect(Object.keys(unzipSync(zip))).toEqual(["cases/24-001.md"]);
    expect(leftOut).toEqual(["cases/24-002.md", "photos/link.jpg", "photos/notes.txt", "photos/stem.jpg"]);
  });
});
