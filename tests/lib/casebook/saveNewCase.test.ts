import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { saveNewCase } from "@/lib/casebook/saveNewCase";
import { formatProblem } from "@/lib/document/contentProblem";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

const save = (text: string, folder: string) => saveNewCase(text, folder, smallVocabulary, "a");
const file = "24-001.md";

describe("a new case that is saved", () => {
  it("stands under its id, byte for byte as it was given, and nothing else is left beside it", () => {
    const folder = temporaryFolder();
    const saved = save(goodCase, folder);
    expect(readdirSync(folder)).toEqual([file]);
    expect(readFileSync(join(folder, file), "utf8")).toBe(goodCase);
    expect(saved.case).toEqual(loadCasebook(folder, smallVocabulary).cases.get("24-001"));
  });

  it("finds its folder made where there was none", () => {
    const folder = join(temporaryFolder(), "own", "cases");
    expect(save(goodCase, folder).problems).toEqual([]);
    expect(readdirSync(folder)).toEqual([file]);
  });

  it("is not hindered by what a broken-off save left behind", () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, ".24-001.b.half"), "---\nid: 24-0");
    expect(save(goodCase, folder).problems).toEqual([]);
    expect([...loadCasebook(folder, smallVocabulary).cases.keys()]).toEqual(["24-001"]);
  });
});

describe("a case that cannot be saved", () => {
  it("because its id is taken leaves the other as it was, and says so", () => {
    const folder = temporaryFolder();
    save(goodCase, folder);
    const second = save(change(goodCase, "It was washed", "It was soaked"), folder);
    expect(second.case).toBeUndefined();
    expect(second.problems.map(formatProblem)).toEqual([
      `${file} id: found '24-001', which another case has; write an id of its own`,
    ]);
    expect(readFileSync(join(folder, file), "utf8")).toBe(goodCase);
    expect(readdirSync(folder)).toEqual([file]);
  });

  it("because its id's place is taken by something that is no case leaves that too", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, file));
    expect(save(goodCase, folder).problems).toHaveLength(1);
    expect(readdirSync(folder)).toEqual([file]);
  });

  it("because it does not hold is told everything at once and leaves no trace", () => {
    const folder = temporaryFolder();
    const text = change(change(goodCase, "cornet", "cornt"), "minutes: 10", "minutes: -5");
    expect(save(text, folder).problems.map(formatProblem)).toEqual([
      "case.md:11 path.1.minutes: found -5; write a number of 0 or more",
    ]);
    const wordsOnly = change(change(goodCase, "cornet", "cornt"), "found: hangs", "found: hang");
    expect(save(wordsOnly, folder).problems.map(({ field }) => field)).toEqual([
      "instrument",
      "path.0.found",
    ]);
    expect(readdirSync(folder)).toEqual([]);
  });

  it.each(["../24-001", "24-001/../../x", "/etc/x", "", ".", "24 001", "24-001.md"])(
    "because its id is '%s' touches nothing, there or elsewhere",
    (id) => {
      const outer = temporaryFolder();
      const folder = join(outer, "cases");
      const saved = save(change(goodCase, "id: 24-001", `id: ${JSON.stringify(id)}`), folder);
      expect(saved.problems.map(({ field }) => field)).toEqual(["id"]);
      expect(readdirSync(outer)).toEqual([]);
    },
  );

  it("because its folder is a file says so by an exception and leaves that file", () => {
    const folder = join(temporaryFolder(), "cases");
    writeFileSync(folder, "mine");
    expect(() => save(goodCase, folder)).toThrow();
    expect(readFileSync(folder, "utf8")).toBe("mine");
  });
});

describe("several programs that save one id at once", () => {
  it("have exactly one winner, whose case stands whole; the others are told that the id is taken", async () => {
    const folder = temporaryFolder();
    const start = join(temporaryFolder(), "start");
    const program = fileURLToPath(new URL("saveOnce.ts", import.meta.url));
    const savers = ["one", "two", "three", "four"].map((mark) => {
      const child = spawn(process.execPath, ["--import", "tsx", program, folder, start, mark]);
      let told = "";
      const ready = new Promise<void>((resolve, reject) => {
        child.stdout.on("data", (words) => {
          told += words;
          if (told.startsWith("ready\n")) resolve();
        });
        child.on("error", reject);
        child.on("exit", () => resolve());
      });
      const ended = new Promise<void>((resolve) => child.on("close", () => resolve()));
      return { mark, ready, ended, told: () => told };
    });
    await Promise.all(savers.map(({ ready }) => ready));
    writeFileSync(start, "");
    await Promise.all(savers.map(({ ended }) => ended));
    rmSync(start);

    const winners = savers.filter(({ told }) => told() === "ready\nsaved\n");
    const others = savers.filter(({ told }) => told() === "ready\n'24-001', which another case has\n");
    expect([winners.length, others.length]).toEqual([1, 3]);
    expect(readdirSync(folder)).toEqual([file]);
    expect(readFileSync(join(folder, file), "utf8")).toBe(
      change(goodCase, "It was washed", `It was washed by ${winners[0]?.mark}`),
    );
  }, 60_000);
});
