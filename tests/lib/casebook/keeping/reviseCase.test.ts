import { mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contentHash, noFile } from "@/lib/casebook/keeping/contentHash";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { readRevision } from "@/lib/casebook/keeping/readRevision";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { writeCase } from "@/lib/casebook/writeCase";
import { readFrontMatter } from "@/lib/document/readFrontMatter";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";
import { anyFields, anyStory } from "../anyCase";
import { failingDisk, keeper, keptCase, nowMs, saveOver, told } from "./keepingFixture";

const hash = contentHash(goodCase);

describe("a case that is saved over its earlier version", () => {
  it("stands as it was written, with both versions kept and nothing else lying about", () => {
    const place = keptCase();
    const revised = reviseCase({ text: told("Two."), baseHash: hash }, place, keeper);
    expect(revised.kind).toBe("saved");
    expect(readFileSync(place.path, "utf8")).toBe(told("Two."));
    expect(readdirSync(place.folder).sort()).toEqual([".revisions", "24-001.md"]);
    expect(listRevisions(place).map(({ number }) => readRevision(place, number))).toEqual([
      told("Two."),
      goodCase,
    ]);
    expect(readdirSync(place.revisions).filter((name) => name.endsWith(".half"))).toEqual([]);
  });

  it("is loaded without its revisions being taken for cases", () => {
    const place = keptCase();
    for (const story of ["Two.", "Three."]) saveOver(place, story);
    const { cases, problems } = loadCasebook(place.folder, smallVocabulary);
    expect([...cases.values()].map(({ story }) => story)).toEqual(["Three."]);
    expect(problems).toEqual([]);
  });

  it("may be saved twice with the same words, which changes nothing: a second tap does no harm", () => {
    const place = keptCase();
    const edit = { text: told("Two."), baseHash: hash };
    expect(reviseCase(edit, place, keeper).kind).toBe("saved");
    expect(reviseCase(edit, place, keeper).kind).toBe("saved");
    expect(listRevisions(place)).toHaveLength(2);
  });

  it("keeps fields that nobody here knows, and is byte-stable on a second save", () => {
    fc.assert(
      fc.property(anyFields, anyStory, (fields, story) => {
        const text = writeCase({ ...fields, id: "24-001" }, story);
        const { data, body } = readFrontMatter(text, "a.md");
        const again = writeCase(Object.fromEntries(Object.entries(data ?? {})), body);
        expect(again).toBe(text);
      }),
      { numRuns: 100 },
    );
  });

  it("keeps what an editor wrote in between saves among its revisions", () => {
    const place = keptCase();
    saveOver(place, "Two.");
    writeFileSync(place.path, told("By an editor."));
    saveOver(place, "Three.");
    const kept = listRevisions(place).map(({ number }) => readRevision(place, number));
    expect(kept).toEqual([told("Three."), told("By an editor."), told("Two."), goodCase]);
  });
});

describe("a case that changed under the hands", () => {
  it("is left as it stands; both versions come back and both are kept", () => {
    const place = keptCase();
    writeFileSync(place.path, told("Theirs."));
    const revised = reviseCase({ text: told("Mine."), baseHash: hash }, place, keeper);
    expect(revised).toEqual({
      kind: "conflict",
      mine: told("Mine."),
      theirs: told("Theirs."),
      theirHash: contentHash(told("Theirs.")),
    });
    expect(readFileSync(place.path, "utf8")).toBe(told("Theirs."));
    const kept = listRevisions(place);
    expect(kept.map(({ aside }) => aside)).toEqual([true, false]);
    expect(kept.map(({ number }) => readRevision(place, number))).toEqual([told("Mine."), told("Theirs.")]);
  });

  it("by being taken away can be put back with the hash of no file", () => {
    const place = keptCase();
    rmSync(place.path);
    const first = reviseCase({ text: told("Mine."), baseHash: hash }, place, keeper);
    expect(first).toMatchObject({ kind: "conflict", theirs: "", theirHash: noFile });
    expect(reviseCase({ text: told("Mine."), baseHash: noFile }, place, keeper).kind).toBe("saved");
  });
});

describe("a save that cannot be done", () => {
  it.each([
    ["ENOSPC", "a full disk"],
    ["EDQUOT", "a full disk"],
    ["EROFS", "a disk that may only be read"],
    ["EACCES", "a folder that may not be written to"],
    ["EPERM", "a folder that may not be written to"],
  ])("for %s says in words that it found %s, and the file is as it was", (code, received) => {
    const place = keptCase();
    const revised = reviseCase({ text: told("Two."), baseHash: hash }, place, {
      ...keeper,
      disk: failingDisk(code),
    });
    expect(revised).toMatchObject({ kind: "refused", problems: [{ received }] });
    expect(readFileSync(place.path, "utf8")).toBe(goodCase);
    expect(saveOver(place, "Two.").kind).toBe("saved");
  });

  it("for a reason nobody foresaw throws it on", () => {
    expect(() =>
      reviseCase({ text: told("Two."), baseHash: hash }, keptCase(), {
        ...keeper,
        disk: failingDisk("EWOMBAT"),
      }),
    ).toThrow("EWOMBAT");
  });

  it("because it does not hold, or would change the id, touches nothing", () => {
    const place = keptCase();
    const save = (text: string) => reviseCase({ text, baseHash: hash }, place, keeper);
    expect(save(change(goodCase, "cornet", "cornt"))).toMatchObject({
      kind: "refused",
      problems: [{ field: "instrument" }],
    });
    expect(save(change(goodCase, "id: 24-001", "id: 24-002"))).toMatchObject({
      kind: "refused",
      problems: [{ field: "id", received: "'24-002'" }],
    });
    expect(readdirSync(place.folder)).toEqual(["24-001.md"]);
  });

  it("because the file or its revisions lead elsewhere by a link leaves what lies there", () => {
    const elsewhere = temporaryFolder();
    const place = keptCase();
    symlinkSync(elsewhere, join(place.folder, ".revisions"));
    expect(saveOver(place, "Two.")).toMatchObject({ kind: "refused" });
    expect(readdirSync(elsewhere)).toEqual([]);
    const linked = keptCase();
    rmSync(linked.path);
    symlinkSync(place.path, linked.path);
    expect(() => readKept(linked)).toThrow("must be a file");
  });
});

describe("the lock of a case", () => {
  const lock = (place: ReturnType<typeof keptCase>, pid: number) => {
    mkdirSync(place.revisions, { recursive: true });
    writeFileSync(join(place.revisions, "7.lock"), JSON.stringify({ pid, host: hostname() }));
  };

  it("of a program that was killed is passed over, and what it left half written is taken away", () => {
    const place = keptCase();
    // No system gives out a process number this high.
    lock(place, 2 ** 30);
    writeFileSync(join(place.folder, ".24-001.7.half"), "half");
    expect(saveOver(place, "Two.").kind).toBe("saved");
    expect(readdirSync(place.folder).sort()).toEqual([".revisions", "24-001.md"]);
  });

  it("of a program that lives is waited for, then it is said that another is saving", () => {
    const place = keptCase();
    lock(place, process.ppid);
    expect(saveOver(place, "Two.")).toMatchObject({
      kind: "refused",
      problems: [{ received: "another program that is saving this file" }],
    });
    expect(readFileSync(place.path, "utf8")).toBe(goodCase);
  });
});

describe("the order of revisions", () => {
  it("is that of saving, though the clock went back at every one", () => {
    const place = keptCase();
    const stories = ["One.", "Two.", "Three.", "Four."];
    for (const [at, story] of stories.entries()) saveOver(place, story, nowMs - at * 3_600_000);
    const kept = listRevisions(place).map(({ number }) => readRevision(place, number));
    expect(kept.reverse().slice(1)).toEqual(stories.map(told));
  });
});
