import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { commandTimeout, runBenchlore } from "./runBenchlore";

const folder = mkdtempSync(join(tmpdir(), "benchlore-case-"));
afterAll(() => rmSync(folder, { recursive: true }));
const oneLine = /^[^\n]+\n$/;
let made = 0;
const emptyContent = () => {
  const content = join(folder, `content-${++made}`);
  mkdirSync(join(content, "cases"), { recursive: true });
  return content;
};
const fileOf = (name: string, text: string | Uint8Array) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const casesIn = (content: string) =>
  readdirSync(join(content, "cases")).filter((name) => name.endsWith(".md"));
const sampleName = readdirSync("content/cases").find((name) => name.endsWith(".md")) ?? "";
const sample = readFileSync(join("content/cases", sampleName), "utf8");
const old =
  "Horn;In;Out;Problem;Cause;Result;Time\ntpt;03.04.2019;23.04.2019;sticks;gummed oil;fixed;1:20\nkazoo;;;;;;\n";

describe("case on the command line", { timeout: commandTimeout }, () => {
  it("starts an open sheet and says where it lies", async () => {
    const content = emptyContent();
    const { code, out, err } = await runBenchlore(
      ["case", "new", "--instrument", "tpt", "--says", "valve 2 sticks"],
      { content },
    );
    expect([code, err]).toEqual([0, ""]);
    const told = z
      .object({ id: z.string(), status: z.literal("open"), file: z.string() })
      .parse(JSON.parse(out));
    expect(readFileSync(told.file, "utf8")).toContain("complaint: valve 2 sticks");
    expect(casesIn(content)).toEqual([`${told.id}.md`]);
  });

  it("writes an empty case file, never over another, and takes it in once it holds", async () => {
    const content = emptyContent();
    const file = join(folder, "blank.md");
    expect((await runBenchlore(["case", "new", file], { content })).code).toBe(0);
    const blank = readFileSync(file, "utf8");
    expect((await runBenchlore(["case", "new", file], { content })).code).toBe(1);
    expect(readFileSync(file, "utf8")).toBe(blank);
    const { code, out, err } = await runBenchlore(["case", "add", file], { content });
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(/blank\.md:3 title: found nothing; write words; blank\.md:5 instrument/);
    expect(casesIn(content)).toEqual([]);
  });

  it("takes a case file in to the byte, and refuses its id when it is taken", async () => {
    const content = emptyContent();
    const first = await runBenchlore(["case", "add", join("content/cases", sampleName)], { content });
    expect([first.code, first.err]).toEqual([0, ""]);
    expect(readFileSync(join(content, "cases", sampleName), "utf8")).toBe(sample);
    const changed = fileOf("changed.md", `${sample}\nOne line more.\n`);
    const second = await runBenchlore(["case", "add", changed], { content });
    expect([second.code, second.out]).toEqual([1, ""]);
    expect(second.err).toMatch(oneLine);
    expect(second.err).toContain("which another case has");
    expect(readFileSync(join(content, "cases", sampleName), "utf8")).toBe(sample);
  });

  it("only tells what would come of a table, and takes in what can be when it is to write", async () => {
    const content = emptyContent();
    const file = fileOf("old.csv", old);
    const tried = await runBenchlore(["case", "import", file], { content });
    expect(tried.code).toBe(1);
    expect(tried.err).toMatch(oneLine);
    expect(JSON.parse(tried.out)).toMatchObject({ written: false, ready: 1, refused: 1, separator: ";" });
    expect(casesIn(content)).toEqual([]);
    const done = await runBenchlore(["case", "import", file, "--write"], { content });
    expect(JSON.parse(done.out)).toMatchObject({ written: true, ready: 1, refused: 1 });
    expect(casesIn(content)).toEqual(["19-001.md"]);
    const again = await runBenchlore(["case", "import", file, "--write"], { content });
    expect(JSON.parse(again.out)).toMatchObject({ ready: 0, refused: 2 });
    expect(casesIn(content)).toEqual(["19-001.md"]);
  });

  it("matches columns as it is told to, by heading or number", async () => {
    const content = emptyContent();
    const file = fileOf("odd.csv", "A,B,C,D,E,F,G\ntpt,2019-04-03,2019-04-04,sticks,gummed oil,fixed,20\n");
    const columns = "A=instrument,B=received,C=closed,4=complaint,5=cause,6=outcome,G=minutes";
    const { code, out } = await runBenchlore(["case", "import", file, "--columns", columns], { content });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ ready: 1, refused: 0 });
  });

  it.each([
    [["case"]],
    [["case", "burn"]],
    [["case", "add"]],
    [["case", "import"]],
    [["case", "import", "x.csv", "--dates", "ydm"]],
    [["case", "import", "x.csv", "y.csv"]],
    [["case", "new", "--colour", "red"]],
  ])("ends with 2 when it is used as %j", async (args) => {
    fileOf("x.csv", old);
    const { code, out, err } = await runBenchlore(
      args.map((arg) => (arg === "x.csv" ? join(folder, arg) : arg)),
      { content: emptyContent() },
    );
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(oneLine);
  });

  it.each([
    ["a file that is not there", "nothing.csv", undefined],
    ["an empty table", "empty.csv", ""],
    ["no text", "zero.csv", new Uint8Array([1, 0, 2])],
    ["a zip cut short", "cut.zip", new Uint8Array([80, 75, 3, 4, 0, 0])],
  ])("ends with 1 and one line for %s", async (_, name, bytes) => {
    const content = emptyContent();
    const path = bytes === undefined ? join(folder, name) : fileOf(name, bytes);
    const { code, out, err } = await runBenchlore(["case", "import", path, "--write"], { content });
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(oneLine);
    expect(casesIn(content)).toEqual([]);
  });

  it("starts an empty casebook of one's own, and none where cases are", async () => {
    const own = join(folder, "own");
    const { code, out } = await runBenchlore(["case", "casebook", own]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ content: own, cases: 0 });
    expect(existsSync(join(own, "cases"))).toBe(true);
    expect((await runBenchlore(["case", "casebook", "content"])).code).toBe(1);
  });
});

describe("export on the command line", { timeout: commandTimeout }, () => {
  it("writes a zip that is taken in again as the same files", async () => {
    const zip = join(folder, "all.zip");
    const { code, out } = await runBenchlore(["export", "--format", "zip", "--to", zip]);
    const count = casesIn("content").length;
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual({ file: zip, format: "zip", cases: count, leftOut: [] });
    const content = emptyContent();
    const taken = await runBenchlore(["case", "import", zip, "--write"], { content });
    const lessons = readdirSync("content/lessons");
    expect(JSON.parse(taken.out)).toMatchObject({
      ready: count + lessons.length,
      refused: 0,
      differing: 0,
      thereAlready: 0,
    });
    for (const name of lessons) expect(existsSync(join(content, "lessons", name))).toBe(true);
    for (const name of casesIn("content"))
      expect(readFileSync(join(content, "cases", name), "utf8")).toBe(
        readFileSync(join("content/cases", name), "utf8"),
      );
    const again = await runBenchlore(["export", "--format", "zip", "--to", zip]);
    expect([again.code, again.out]).toEqual([1, ""]);
  });

  it("gives JSON and CSV on standard output", async () => {
    const json = await runBenchlore(["export", "--format", "json"]);
    expect(JSON.parse(json.out)).toMatchObject({ form: "Benchlore casebook", version: 1 });
    const csv = await runBenchlore(["export", "--format", "csv"]);
    expect(csv.out.startsWith('\uFEFF"Job number"')).toBe(true);
    expect([json.code, csv.code, json.err, csv.err]).toEqual([0, 0, "", ""]);
  });

  it.each([[["export"]], [["export", "--format", "pdf"]], [["export", "x", "--format", "csv"]]])(
    "ends with 2 when it is used as %j",
    async (args) => {
      const { code, out, err } = await runBenchlore(args);
      expect([code, out]).toEqual([2, ""]);
      expect(err).toMatch(oneLine);
    },
  );
});
