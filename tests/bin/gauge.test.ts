import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { commandTimeout, runBenchlore } from "./runBenchlore";

const folder = mkdtempSync(join(tmpdir(), "benchlore-gauge-"));
afterAll(() => rmSync(folder, { recursive: true }));
const fileOf = (name: string, value: unknown) => {
  const path = join(folder, name);
  writeFileSync(path, typeof value === "string" ? value : JSON.stringify(value));
  return path;
};
const oneLine = /^[^\n]+\n$/;
const readings = {
  id: "any",
  gauges: [
    {
      part: "casing 2",
      depth: "1.2 in",
      passes: [".669 in"],
      stops: [".671 in"],
      reference: { part: "casing 1", passes: [".672 in"], stops: [".673 in"] },
      piston: { part: "piston 2", diameter: ".6675 in", plusMinus: ".0001 in" },
    },
    {
      part: "casing 3",
      passes: [".6820 in"],
      stops: [".6840 in", "16.88 in"],
      reference: { passes: [".6850 in"] },
    },
  ],
  swaps: [
    { a: "piston 2", b: "casing 1", result: "free" },
    { a: "piston 2", b: "casing 2", result: "sticks" },
  ],
};

describe("gauge on the command line", { timeout: commandTimeout }, () => {
  it("answers one set of readings with one answer and nothing else on standard output", async () => {
    const { code, out, err } = await runBenchlore(["gauge", fileOf("one.json", readings)]);
    expect([code, err]).toEqual([0, ""]);
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({
      id: "any",
      gauges: [
        {
          part: "casing 2",
          lowIn: 0.669,
          highIn: 0.671,
          lowMm: 16.9926,
          highMm: 17.0434,
          reductionThou: { low: 1, high: 4 },
          clearanceThou: { low: 1.4, high: 3.6, verdict: "sure-clearance" },
          flags: [],
        },
        { reductionThou: { low: 1, high: null }, reductionMm: { low: 0.0254, high: null } },
      ],
      swaps: { nextSwap: ["piston 1", "casing 2"], contradictions: [] },
    });
    expect(answer.flags.join("\n")).toContain("casing 3: implausible unit: '16.88 in'");
    expect(answer.flags.join("\n")).toContain(
      "casing 3: open: needs the smallest plug that stops in the reference",
    );
  });

  it("answers a list with a list, in the same order, from standard input", async () => {
    const input = JSON.stringify([
      { id: 2, diameters: [{ part: "casing 2", readings: [{ angle: 0, diameter: 0.67 }] }] },
      { id: 1, swaps: [{ a: "leg", b: "tube", result: "drags" }] },
    ]);
    const { code, out, err } = await runBenchlore(["gauge", "-"], { input });
    expect([code, err]).toEqual([0, ""]);
    const answers = JSON.parse(out);
    expect(answers.map(({ id }: { id: string }) => id)).toEqual(["2", "1"]);
    expect(answers[0].flags.join()).toContain("too few readings");
  });

  it.each([
    ["no readings", { id: 1 }, "at least one reading"],
    ["a slip in a name", { gages: [] }, "gages"],
    ["a result that is none", { swaps: [{ a: "x", b: "y", result: "tight" }] }, "swaps.0.result"],
    ["JSON cut short", '{"gauges": [', "JSON"],
    ["an empty list", [], "at least 1"],
  ])("refuses %s in one line on standard error", async (name, value, told) => {
    const file = fileOf(`${name}.json`, value);
    const { code, out, err } = await runBenchlore(["gauge", file]);
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(oneLine);
    expect(err).toContain(file);
    expect(err).toContain(told);
  });

  it("shows its use where it is used wrongly", async () => {
    const { code, out, err } = await runBenchlore(["gauge"]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/^usage: [^\n]+\n$/);
  });
});
