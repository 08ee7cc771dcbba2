import { readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { idOfName } from "@/lib/casebook/files/idOfName";
import { listContentFiles } from "@/lib/casebook/files/listContentFiles";
import { openContentShelf } from "@/lib/casebook/files/openContentShelf";
import { readLearner } from "@/lib/casebook/learners/readLearner";
import { welcomeLearner } from "@/lib/casebook/learners/welcomeLearner";
import { writeLearner } from "@/lib/casebook/learners/writeLearner";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { session } from "@/tests/lib/study/memory/sessions";
import { goodLearner, keptLearner } from "./learnerFixture";

const keeper = { nowMs: Date.UTC(2026, 2, 2), mark: "a" };
const shelfOf = (folder: string) =>
  openContentShelf(folder, (text, file) => {
    const { learner, problems } = readLearner(text, file);
    return { entry: learner, problems };
  });
const welcome = (name: string, folder: string) =>
  welcomeLearner(name, { known: shelfOf(folder).all().entries, folder, today: "2026-03-02" }, keeper);

describe("a learner's file", () => {
  it("gives the same text again once it was written here, whatever the name and the sessions are", () => {
    const name = fc
      .string({ minLength: 1, maxLength: 60, unit: "grapheme" })
      .map((text) => text.replaceAll(/[\p{C}\p{Zl}\p{Zp}]/gu, "").trim())
      .filter((text) => text.length > 0 && text.length <= 60);
    const score = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(name, fc.array(score, { maxLength: 5 }), (who, scores) => {
        const sessions = scores.map((one, at) => session({ case: `24-00${at}`, score: one }));
        const fields = { id: "ada-brook", name: who, demo: false, since: "2026-03-01", sessions };
        const text = writeLearner(fields, "A note.");
        const { learner } = readLearner(text, "ada-brook.md");
        expect(learner).toEqual({ ...fields, notes: "A note.", file: "ada-brook.md" });
        expect(learner && writeLearner(fields, learner.notes)).toBe(text);
      }),
      { numRuns: 100 },
    );
  });

  it.each([
    ["name: Ada Brook", 'name: ""', "ada-brook.md:3 name"],
    ["since: 2026-03-01", "since: 2026-02-31", "ada-brook.md:4 since"],
    ["score: 0.164", "score: 3", "ada-brook.md:7 sessions.0.score"],
    ["verdict: right", "verdict: perhaps", "ada-brook.md:7 sessions.0.verdict"],
    ["id: ada-brook", "id: bob", "ada-brook.md:2 id"],
  ])("with '%s' made '%s' is set aside, and the place is named", (right, wrong, place) => {
    const { learner, problems } = readLearner(goodLearner.replace(right, wrong), "ada-brook.md");
    expect(learner).toBeUndefined();
    expect(problems.map(({ file, line, field }) => `${file}:${line} ${field}`)).toEqual([place]);
  });
});

describe("the shelf of learners", () => {
  it("has what an editor has just written, without being told", () => {
    const { folder, path } = keptLearner();
    const shelf = shelfOf(folder);
    const before = shelf.get("ada-brook.md");
    expect(shelf.get("ada-brook.md")).toBe(before);
    writeFileSync(path, goodLearner.replace("Ada Brook", "Ada B. Brook"));
    expect(shelf.get("ada-brook.md")?.name).toBe("Ada B. Brook");
  });

  it("sets a broken file and a link to elsewhere aside, and keeps the others", () => {
    const { folder, path } = keptLearner();
    writeFileSync(join(folder, "broken.md"), "no fields");
    symlinkSync(path, join(folder, "linked.md"));
    const { entries, problems } = shelfOf(folder).all();
    expect(entries.map(({ id }) => id)).toEqual(["ada-brook"]);
    expect(problems.map(({ file }) => file)).toEqual(["broken.md", "linked.md"]);
    expect(shelfOf(folder).get("linked.md")).toBeUndefined();
  });

  it("is empty where there is no folder yet", () => {
    expect(shelfOf(join(temporaryFolder(), "none")).all()).toEqual({ entries: [], problems: [] });
  });
});

describe("somebody who says their name", () => {
  it("goes on with the file of that name, capitals and blanks aside", () => {
    const { folder } = keptLearner();
    expect(welcome("  ada   BROOK ", folder)).toEqual({ id: "ada-brook", problems: [] });
    expect(listContentFiles(folder)).toEqual(["ada-brook.md"]);
  });

  it("begins a file where there is none, in a folder that may not be there yet", () => {
    const folder = join(temporaryFolder(), "learners");
    expect(welcome("Zoë Bell", folder).id).toBe("zoe-bell");
    const { learner } = readLearner(readFileSync(join(folder, "zoe-bell.md"), "utf8"), "zoe-bell.md");
    expect(learner).toMatchObject({ name: "Zoë Bell", since: "2026-03-02", sessions: [] });
  });

  it("gets a file of their own beside one whose name makes the same id", () => {
    const { folder } = keptLearner();
    expect(welcome("Ada-Brook", folder).id).toBe("ada-brook-2");
    expect(welcome("春", folder).id).toBe("learner");
    expect(welcome("夏", folder).id).toBe("learner-2");
  });

  it("is asked again where there is no name in it", () => {
    for (const name of ["", "   ", "x".repeat(61), "a\u0000b"])
      expect(welcome(name, temporaryFolder())).toMatchObject({
        id: undefined,
        problems: [{ field: "name" }],
      });
  });
});

describe("an id made of a name", () => {
  it("is always one that can be a file's name, and never one that is taken", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (name) => {
        const first = idOfName(name, new Set(), "lesson");
        const second = idOfName(name, new Set([first]), "lesson");
        expect(first).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
        expect(first.length).toBeLessThanOrEqual(40);
        expect(second).toBe(`${first}-2`);
      }),
    );
  });
});
