import { describe, expect, it } from "vitest";
import { revealFinding } from "@/lib/study/asking/revealFinding";
import { studyEvidence } from "@/lib/study/asking/studyEvidence";
import { found, studyBench, studyCase } from "../studyBench";

const fixed = { repair: "raise", result: "fixed" };
const valve = (place: number) => ({ part: `valve ${place}` });
const reveal = (path: readonly object[], check: string, before: readonly string[] = []) =>
  revealFinding(studyCase(path), check, before, studyBench);
const outcomes = (path: readonly object[], check: string, before: readonly string[] = []) => {
  const revealed = reveal(path, check, before);
  return revealed.kind === "found"
    ? revealed.findings.map((one) => `${one.check} ${one.outcome}`)
    : "not done";
};

describe("what asking for a check brings", () => {
  it("is every time it was made before the cure, on whatever part", () => {
    const path = [
      found("travel", "hangs", valve(2)),
      found("ask-age", "yes"),
      found("travel", "free", valve(1)),
    ];
    expect(outcomes(path, "travel")).toEqual(["travel hangs", "travel free"]);
  });

  it("is nothing of what was seen after the repair that fixed it, or did harm", () => {
    expect(outcomes([fixed, found("travel", "free")], "travel")).toBe("not done");
    expect(outcomes([{ ...fixed, result: "harm" }, found("dent-seen", "yes")], "dent-seen")).toBe("not done");
    expect(outcomes([{ ...fixed, result: "better" }, found("dent-seen", "yes")], "dent-seen")).toEqual([
      "dent-seen yes",
    ]);
  });

  it("brings along what was noted with it, and the other way round", () => {
    const path = [found("travel", "hangs", { where: "top" })];
    expect(outcomes(path, "travel")).toEqual(["travel hangs", "place top"]);
    expect(outcomes(path, "place")).toEqual(["travel hangs", "place top"]);
    expect(studyEvidence(studyCase(path), ["travel"], studyBench.vocabulary).settled).toEqual(
      new Set(["travel", "place"]),
    );
  });

  it("is the result of a repair that was a trial of it", () => {
    expect(outcomes([{ repair: "clean", result: "no-change" }], "cleaned")).toEqual(["cleaned no-change"]);
  });

  it("reads a swap beside how the valves run by themselves, once that is known", () => {
    const path = [
      found("travel", "hangs", valve(2)),
      found("travel", "free", valve(1)),
      { swap: ["piston 1", "casing 2"], found: "sticks" },
    ];
    expect(outcomes(path, "swap")).toEqual([]);
    expect(outcomes(path, "swap", ["travel"])).toEqual(["swap host"]);
  });

  it("says that it was not done on this job, and what is typical: a dent is seen with a dent in 0.923 of jobs", () => {
    const revealed = reveal([found("travel", "hangs")], "dent-seen");
    expect(revealed.kind).toBe("not done");
    const typical = revealed.kind === "not done" ? revealed.typical : null;
    expect(typical?.outcome).toBe("yes");
    expect(typical?.probability).toBeCloseTo(0.923, 10);
  });

  it("calls nothing typical where the cause is not known", () => {
    const revealed = revealFinding(studyCase([], { causes: [] }), "dent-seen", [], studyBench);
    expect(revealed).toEqual({ kind: "not done", check: "dent-seen", typical: null });
  });

  it("is no evidence where it is only typical", () => {
    expect(studyEvidence(studyCase([]), ["dent-seen"], studyBench.vocabulary).findings).toEqual([]);
  });
});
