import { describe, expect, it } from "vitest";
import { commandTimeout, runBenchlore } from "./runBenchlore";

describe("evaluate on the command line", { timeout: commandTimeout }, () => {
  it("asks every finished case of the casebook about itself", async () => {
    const { code, out, err } = await runBenchlore(["evaluate", "--casebook"]);
    expect([code, err]).toEqual([0, ""]);
    const report = JSON.parse(out);
    expect(report.n).toBeGreaterThan(0);
    expect(report.hit1).toBeLessThanOrEqual(report.hit2);
    expect(report.hit2).toBeLessThanOrEqual(report.hit3);
    expect(report.mrr).toBeGreaterThanOrEqual(report.hit1);
    expect(report.mrr).toBeLessThanOrEqual(1);
    // Those that did not come first are named, one by one.
    expect(report.missed).toHaveLength(Math.round(report.n * (1 - report.hit1)));
  });

  it("shows its use where it is used wrongly", async () => {
    for (const args of [["evaluate"], ["evaluate", "--everything"], ["evaluate", "--casebook", "more"]]) {
      const { code, out, err } = await runBenchlore(args);
      expect([code, out]).toEqual([2, ""]);
      expect(err).toMatch(/^usage: [^\n]+\n$/);
    }
  });
});
