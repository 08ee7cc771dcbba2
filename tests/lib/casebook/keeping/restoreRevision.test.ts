import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { restoreRevision } from "@/lib/casebook/keeping/restoreRevision";
import { formatRevisionName, parseRevisionName } from "@/lib/casebook/keeping/revisionName";
import { goodCase } from "@/tests/fixtures/goodCase";
import { keeper, keptCase, saveOver, told } from "./keepingFixture";

it("a version that is put back is a new version, and those after it are kept", () => {
  const place = keptCase();
  for (const story of ["Two.", "Three."]) saveOver(place, story);
  expect(restoreRevision(1, readKept(place).hash, place, keeper).kind).toBe("saved");
  expect(readFileSync(place.path, "utf8")).toBe(goodCase);
  expect(listRevisions(place).map(({ number }) => number)).toEqual([4, 3, 2, 1]);
});

it("a version is not put back over one that was not on the page", () => {
  const place = keptCase();
  const { hash } = readKept(place);
  saveOver(place, "Two.");
  expect(restoreRevision(1, hash, place, keeper)).toMatchObject({ kind: "conflict", theirs: told("Two.") });
});

it.each([0, 99, -1, 1.5, Number.NaN])("version %s, which there is not, is refused in words", (number) => {
  const place = keptCase();
  saveOver(place, "Two.");
  expect(restoreRevision(number, readKept(place).hash, place, keeper)).toMatchObject({
    kind: "refused",
    problems: [{ field: "version" }],
  });
});

it("a version whose bytes were damaged is not put back", () => {
  const place = keptCase();
  saveOver(place, "Two.");
  const name = readdirSync(place.revisions).find((one) => one.startsWith("000001-"));
  writeFileSync(join(place.revisions, name ?? ""), goodCase.slice(0, 100));
  expect(restoreRevision(1, readKept(place).hash, place, keeper).kind).toBe("refused");
});

it("a revision's name is read back as it was written; no other name is taken for one", () => {
  const revision = { number: 12, at: "2026-11-25T16:27:00Z", hash: "0123456789abcdef", aside: true };
  expect(parseRevisionName(formatRevisionName(revision))).toEqual(revision);
  for (const name of ["12.md", "000012-x.md", ".000012-20261125T162700Z-0123456789abcdef.md", "7.lock"])
    expect(parseRevisionName(name)).toBeUndefined();
});

it.each(["../24-001", "24-001/..", "", ".", "24 001", "/etc/x"])(
  "no path is built from the id '%s'",
  (id) => {
    expect(() => keepingPlace("/cases", id)).toThrow("id must be");
  },
);

it.each(["../a.md", "a/b.md", ".a.md", "a.txt", "a\\b.md"])("no path is built from the file '%s'", (file) => {
  expect(() => keepingPlace("/cases", "24-001", file)).toThrow("file must be");
});
