import { describe, expect, it } from "vitest";
import { judgeRepair } from "@/lib/study/answer/judgeRepair";
import { found, studyBench, studyCase } from "../studyBench";

const kase = studyCase(
  [
    { repair: "clean", result: "no-change" },
    found("dent-seen", "yes"),
    { repair: "raise", result: "better" },
    { repair: "raise", result: "fixed" },
  ],
  { harms: [{ repair: "clean", what: "Lacquer marked.", paidBy: "shop" }] },
);
const judge = (repair: string | undefined, first?: string) =>
  judgeRepair(kase, { repair, first }, studyBench.vocabulary);

describe("a proposed repair", () => {
  it("is set beside the repairs on record and how its own last try ended", () => {
    expect(judge("raise").recorded.map(({ result }) => result)).toEqual(["no-change", "better", "fixed"]);
    expect(judge("raise").result).toBe("fixed");
    expect(judge("clean")).toMatchObject({ result: "no-change", harms: ["Lacquer marked."] });
  });

  it("fits where the handbook names it for the root cause", () => {
    expect(judge("raise").fitsCause).toBe(true);
    expect(judge("clean").fitsCause).toBe(false);
  });

  it("wants the handbook's check before it", () => {
    expect(judge("raise", "dent-seen").rightFirst).toBe(true);
    expect(judge("raise", "travel").rightFirst).toBe(false);
    expect(judge("clean", "dent-seen")).toMatchObject({ checkFirst: [], rightFirst: false });
  });

  it("is nothing where none was named", () => {
    expect(judge(undefined)).toMatchObject({ result: null, fitsCause: false, checkFirst: [], harms: [] });
  });
});
