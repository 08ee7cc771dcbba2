import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contentHash, noFile } from "@/lib/casebook/keeping/contentHash";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { lessonFaults } from "@/lib/casebook/lessons/lessonFaults";
import { readLesson } from "@/lib/casebook/lessons/readLesson";
import { saveLesson } from "@/lib/casebook/lessons/saveLesson";
import { writeLesson } from "@/lib/casebook/lessons/writeLesson";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const goodLesson = `---
id: first-week
title: The first week
demo: false
by: Ada
cases:
  - 24-001
  - 24-002
---

Look before you open.
`;
const keeper = { nowMs: Date.UTC(2026, 2, 2), mark: "a" };
const isFit = (id: string) => id !== "24-009";
const fields = { id: "first-week", title: "The first week", demo: false, by: "Ada", cases: ["24-001"] };

describe("a lesson's file", () => {
  it("gives the same text again", () => {
    const { lesson } = readLesson(goodLesson, "first-week.md");
    expect(lesson).toMatchObject({ cases: ["24-001", "24-002"], introduction: "Look before you open." });
    if (!lesson) throw new Error("a good lesson must be read; it was not; mend readLesson");
    const { introduction, file: _, ...own } = lesson;
    expect(writeLesson(own, introduction)).toBe(goodLesson);
  });

  it.each([
    ["title: The first week", "title: A", "first-week.md:3 title"],
    ["  - 24-002", "  - 24-001", "first-week.md:7 cases"],
    ["id: first-week", "id: second-week", "first-week.md:2 id"],
    ["cases:\n  - 24-001\n  - 24-002", "cases: []", "first-week.md:6 cases"],
  ])("with '%s' made '%s' is set aside, and the place is named", (right, wrong, place) => {
    const { lesson, problems } = readLesson(goodLesson.replace(right, wrong), "first-week.md");
    expect(lesson).toBeUndefined();
    expect(problems.map(({ file, line, field }) => `${file}:${line} ${field}`)).toEqual([place]);
  });

  it("names the line of a case that cannot be worked through", () => {
    const reading = readLesson(goodLesson.replace("24-002", "24-009"), "first-week.md");
    if (!reading.lesson) throw new Error("the lesson must be read; it was not; mend the test");
    expect(lessonFaults(reading, isFit)).toMatchObject([{ line: 8, field: "cases.1", received: "'24-009'" }]);
  });
});

describe("a lesson that is saved", () => {
  it("stands in a file of its own, in a folder that may not be there yet, and is kept version by version", () => {
    const folder = join(temporaryFolder(), "lessons");
    const first = saveLesson({ fields, introduction: "One.", baseHash: noFile }, folder, isFit, keeper);
    if (first.kind !== "saved") throw new Error("a new lesson must be saved; it was not; mend saveLesson");
    const edit = { fields, introduction: "Two.", baseHash: first.hash };
    expect(saveLesson(edit, folder, isFit, keeper).kind).toBe("saved");
    expect(readFileSync(join(folder, "first-week.md"), "utf8")).toContain("\n\nTwo.\n");
    expect(listRevisions(keepingPlace(folder, "first-week"))).toHaveLength(2);
  });

  it("overwrites nobody: both versions come back where the file has changed since", () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "first-week.md"), goodLesson);
    const baseHash = contentHash("something older");
    const saved = saveLesson({ fields, introduction: "Mine.", baseHash }, folder, isFit, keeper);
    expect(saved).toMatchObject({ kind: "conflict", theirs: goodLesson, theirHash: contentHash(goodLesson) });
    expect(readFileSync(join(folder, "first-week.md"), "utf8")).toBe(goodLesson);
  });

  it("is refused with all that is wrong, and nothing is written", () => {
    const folder = temporaryFolder();
    const wrong = { ...fields, cases: ["24-001", "24-009"] };
    expect(
      saveLesson({ fields: wrong, introduction: "", baseHash: noFile }, folder, isFit, keeper),
    ).toMatchObject({ kind: "refused", problems: [{ field: "cases.1" }] });
    const empty = { ...fields, title: "", cases: [] };
    expect(
      saveLesson({ fields: empty, introduction: "", baseHash: noFile }, folder, isFit, keeper),
    ).toMatchObject({ kind: "refused", problems: [{ field: "title" }, { field: "cases" }] });
  });
});
