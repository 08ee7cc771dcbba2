import { existsSync, readdirSync } from "node:fs";
import { expect, it } from "vitest";
import { photosPlace } from "@/lib/casebook/photos/photosPlace";
import { takePhotos } from "@/lib/casebook/photos/takePhotos";
import { plain, sideways } from "@/tests/fixtures/pictures";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { failingDisk } from "../keeping/keepingFixture";

const sent = (name: string, bytes: () => Promise<Uint8Array>) => ({ name, bytes });
const place = () => photosPlace(temporaryFolder(), "24-001");

it("photos that are sent together are kept in their order, one that is sent twice once", async () => {
  const folder = place();
  const both = [sent("a.jpg", sideways), sent("b.png", () => plain("png")), sent("c.jpg", sideways)];
  const { files, problems } = await takePhotos(both, folder, "a");
  expect(problems).toEqual([]);
  expect(files).toHaveLength(2);
  expect(readdirSync(folder)).toHaveLength(4);
});

it("one that is refused keeps all from being taken, and every refusal is told", async () => {
  const folder = place();
  const text = async () => Buffer.from("text");
  const { files, problems } = await takePhotos(
    [sent("a.jpg", sideways), sent("b.jpg", text), sent("c.jpg", async () => Buffer.alloc(0))],
    folder,
    "a",
  );
  expect(files).toEqual([]);
  expect(problems.map(({ field, received }) => `${field}: ${received.slice(0, 7)}`)).toEqual([
    "photos: 'b.jpg'",
    "photos: 'c.jpg'",
  ]);
  expect(existsSync(folder)).toBe(false);
});

it("none at all, and more than a dozen, are refused before any is read", async () => {
  const unread = async () => {
    throw new Error("it must not be read");
  };
  expect((await takePhotos([], place(), "a")).problems[0]?.received).toBe("none chosen");
  const many = Array.from({ length: 13 }, (_, at) => sent(`${at}.jpg`, unread));
  expect((await takePhotos(many, place(), "a")).problems[0]?.received).toBe("13 at one go");
});

it("a full disk is told in words", async () => {
  const { files, problems } = await takePhotos(
    [sent("a.jpg", sideways)],
    place(),
    "a",
    failingDisk("ENOSPC"),
  );
  expect(files).toEqual([]);
  expect(problems[0]?.received).toBe("a full disk");
});
