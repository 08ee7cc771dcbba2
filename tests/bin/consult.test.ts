import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { fullProblem } from "../lib/consult/fullProblem";
import { commandTimeout, runBenchlore } from "./runBenchlore";

const folder = mkdtempSync(join(tmpdir(), "benchlore-consult-"));
afterAll(() => rmSync(folder, { recursive: true }));

const fileOf = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const oneLine = /^[^\n]+\n$/;

describe("consult on the command line", { timeout: commandTimeout }, () => {
  it("answers one problem with one answer and nothing else on standard output", async () => {
    const { code, out, err } = await runBenchlore([
      "consult",
      fileOf("one.json", JSON.stringify(fullProblem)),
    ]);
    expect([code, err]).toEqual([0, ""]);
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({ id: "any", instrument: { id: "trumpet" } });
    expect(answer.understood.length).toBeGreaterThan(0);
    expect(answer.gauging[0].reductionThou).toEqual({ low: 1, high: 4 });
  });

  it("answers a list of problems with a list, in the same order, from standard input", async () => {
    const input = JSON.stringify([
      { id: "b", says: "2nd valve hangs" },
      { id: "a", instrument: "violin", says: "squeaks" },
      { id: "c", evidence: [{ check: "dents", found: "none" }] },
    ]);
    const { code, out, err } = await runBenchlore(["consult", "-"], { input });
    expect([code, err]).toEqual([0, ""]);
    expect(JSON.parse(out).map(({ id }: { id: string }) => id)).toEqual(["b", "a", "c"]);
  });

  it("plans ahead where it is asked to, before or after the file, and not otherwise", async () => {
    const file = fileOf("plan.json", JSON.stringify({ instrument: "trumpet", says: "2nd valve hangs" }));
    const asked = await Promise.all([
      runBenchlore(["consult", "--plan", file]),
      runBenchlore(["consult", file, "--plan"]),
      runBenchlore(["consult", file]),
    ]);
    const [before, after, without] = asked.map(({ out }) => JSON.parse(out));
    expect(before.plan.next.kind).toBe("check");
    expect(before.plan.expectedMinutes).toBeGreaterThanOrEqual(before.plan.boundMinutes);
    expect(after.plan).toEqual(before.plan);
    expect(without).not.toHaveProperty("plan");
  });

  it.each([
    ["cut short", '{"says": "2nd valve\n hangs",\n\n "evidence": [}'],
    ["at fault beside a line's end", '{\n  "says": hangs\n}'],
    ["empty", ""],
    ["prose", "2nd valve\nhangs\n"],
  ])("refuses JSON that is %s in one line on standard error", async (name, text) => {
    const file = fileOf(`${name}.json`, text);
    const { code, out, err } = await runBenchlore(["consult", file]);
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(oneLine);
    expect(err).toContain(file);
  });

  it("refuses a file that is not there in one line", async () => {
    const { code, out, err } = await runBenchlore(["consult", join(folder, "not-there.json")]);
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(oneLine);
    expect(err).toContain("not-there.json");
  });

  it("names the problem of a list that is at fault, and answers none of them", async () => {
    const input = JSON.stringify([{ says: "2nd valve hangs" }, { instrument: "trumpet" }, { says: 3 }]);
    const { code, out, err } = await runBenchlore(["consult", "-"], { input });
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(oneLine);
    expect(err).toContain("standard input 1");
    expect(err).toContain("either says (free text) or evidence");
    expect(err).toContain("2.says");
  });

  it("shows its use where it is used wrongly", async () => {
    for (const args of [
      ["consult"],
      ["consult", "one.json", "two.json"],
      ["consult", "--plan"],
      ["consult", "--plot", "one.json"],
    ]) {
      const { code, out, err } = await runBenchlore(args);
      expect([code, out]).toEqual([2, ""]);
      expect(err).toMatch(/^usage: [^\n]+\n$/);
    }
  });

  it("names the commands there are where one is asked for that is not", async () => {
    for (const args of [["consultt"], []]) {
      const { code, out, err } = await runBenchlore(args);
      expect([code, out]).toEqual([2, ""]);
      expect(err).toContain("consult, check-content, evaluate");
    }
  });
});
