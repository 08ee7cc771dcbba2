import { describe, expect, it } from "vitest";
import { checksTooSoon } from "@/lib/study/review/checksTooSoon";
import { walkStudy } from "@/lib/study/review/walkStudy";
import { found, studyBench, studyCase } from "../studyBench";

const kase = studyCase([found("dirt-seen", "no"), found("dent-seen", "yes"), found("bore-look", "no")]);
const soon = (...asked: string[]) =>
  checksTooSoon(kase, walkStudy(kase, asked, studyBench), studyBench).map(({ at, check, safer }) => ({
    at,
    check,
    safer,
  }));

// Looking into the bore parts dirt from dents by the same words as looking for dirt and for dents do: all three tell alike.
describe("a check made too soon", () => {
  it("took something apart while a safer one was open that would have told as much, ties going by id", () => {
    expect(soon("cap-off", "bore-look")).toEqual([
      { at: 0, check: "cap-off", safer: "dent-seen" },
      { at: 1, check: "bore-look", safer: "dent-seen" },
    ]);
  });

  it("is none once the safer ones are done", () => {
    expect(soon("dent-seen", "dirt-seen", "cap-off", "bore-look")).toEqual([]);
  });

  it("is no check of a lower class, whatever else is open", () => {
    expect(soon("travel", "dirt-seen")).toEqual([]);
  });

  it("is no opener with nothing behind it but what nothing safer would tell", () => {
    expect(soon("dent-seen", "cap-off")).toEqual([{ at: 1, check: "cap-off", safer: "dirt-seen" }]);
    expect(soon("dent-seen", "dirt-seen", "cap-off")).toEqual([]);
  });

  it("is none where the safer ones could not be made before it", () => {
    const checks = new Map(studyBench.vocabulary.checks);
    for (const id of ["dent-seen", "dirt-seen"]) {
      const check = checks.get(id);
      if (check) checks.set(id, { ...check, needs: ["cap-off"] });
    }
    const shut = { ...studyBench, vocabulary: { ...studyBench.vocabulary, checks } };
    expect(checksTooSoon(kase, walkStudy(kase, ["cap-off"], shut), shut)).toEqual([]);
  });
});
