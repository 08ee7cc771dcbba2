import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { buildBench } from "@/lib/consult/bench/bench";
import { leaveOneOut } from "@/lib/evaluation/leaveOneOut";
import { smallCase, smallCasebook, smallCases, springCase } from "../consult/smallCasebook";
import { smallVocabulary } from "../reading/smallVocabulary";

const benchOf = (cases: readonly Case[]) => buildBench(smallVocabulary, smallCasebook(cases));

describe("leaveOneOut", () => {
  it("asks about every finished case with a root cause, in the casebook's order", () => {
    const declined = smallCase("3-1", { outcome: "declined" });
    const asked = leaveOneOut(benchOf([...smallCases, declined]));
    expect(asked.map(({ case: id, root }) => [id, root])).toEqual([
      ["1-1", "dent"],
      ["1-2", "dirt"],
      ["1-3", "weak-spring"],
      ["1-4", "dent"],
    ]);
    for (const { rank, probability, first, root } of asked) {
      expect(rank).toBeGreaterThanOrEqual(1);
      expect(rank === 1).toBe(first === root);
      expect(probability > 0).toBe(Number.isFinite(rank));
    }
  });

  it("gives a case no say in its own answer", () => {
    // A case that blames a cause that its findings speak against: learned, it would raise that cause for itself.
    const odd = (cause: string) =>
      smallCase("4-1", { path: springCase.path, complaint: "Odd.", causes: [{ cause, role: "root" }] });
    const own = (cause: string) =>
      leaveOneOut(benchOf([...smallCases, odd(cause)])).find((one) => one.case === "4-1");
    expect(own("bent-piston")?.first).toBe(own("dirt")?.first);
    expect(own("bent-piston")?.rank).toBeGreaterThan(1);
  });

  it("leaves the bench as it was", () => {
    const bench = benchOf(smallCases);
    const jobs = () => bench.model.causes.map((_, row) => bench.model.jobsOf(row));
    const before = jobs();
    const first = leaveOneOut(bench);
    for (const [row, value] of jobs().entries()) expect(value).toBeCloseTo(before[row] ?? 0, 12);
    expect(leaveOneOut(bench).map(({ rank }) => rank)).toEqual(first.map(({ rank }) => rank));
  });

  it("asks nothing of an empty casebook", () => {
    expect(leaveOneOut(benchOf([]))).toEqual([]);
  });
});
