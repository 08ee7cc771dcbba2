import { describe, expect, it } from "vitest";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { beliefLines } from "@/lib/study/review/beliefLines";
import { plannedAsks } from "@/lib/study/review/plannedAsks";
import { recordedAsks } from "@/lib/study/review/recordedAsks";
import { found, studyBench, studyCase } from "./studyBench";

const fixed = { repair: "raise", result: "fixed" };

describe("the recorded way", () => {
  const recorded = (...path: object[]) => recordedAsks(studyCase(path), studyBench.vocabulary);

  it("is each check once, where it was first made, up to the cure", () => {
    expect(
      recorded(
        found("travel", "hangs"),
        found("ask-age", "no"),
        found("travel", "hangs"),
        fixed,
        found("place", "top"),
      ),
    ).toEqual(["travel", "ask-age"]);
  });

  it("leaves out what was noted along with another, and the repairs that were no trial", () => {
    expect(
      recorded(
        found("travel", "hangs", { where: "top" }),
        { repair: "raise", result: "no-change" },
        found("place", "top"),
      ),
    ).toEqual(["travel"]);
  });

  it("counts a swap and a repair that was a trial as the checks that they are", () => {
    expect(
      recorded({ swap: ["piston 1", "casing 2"], found: "free" }, { repair: "clean", result: "no-change" }),
    ).toEqual(["swap", "cleaned"]);
  });
});

describe("the way the bench would have gone", () => {
  const planned = (...path: object[]) => plannedAsks(studyCase(path), studyBench);

  it("asks for what tells most for its cost, and stops where one cause stands over 80 in 100", () => {
    // All three tell alike. Dirt costs a minute and a little risk, a dent two minutes, the bore seven with its cap. No dirt
    // leaves dirt 0.576 * 0.077, dent 0.384 * 0.932, neither 0.04 * 0.5: the dent stands at 0.848.
    expect(planned(found("bore-look", "no"), found("dent-seen", "yes"), found("dirt-seen", "no"))).toEqual([
      "dirt-seen",
    ]);
  });

  it("opens the way first, and asks for nothing that the job did not check", () => {
    expect(planned(found("bore-look", "no"))).toEqual(["cap-off", "bore-look"]);
    expect(planned()).toEqual([]);
  });
});

describe("a job that can be studied", () => {
  const three = [found("travel", "hangs"), found("dent-seen", "yes"), found("ask-age", "no")];

  it("is closed, has a root cause and three checks before the cure", () => {
    expect(isFitForStudy(studyCase([...three, fixed]))).toBe(true);
    expect(isFitForStudy(studyCase(three, { status: "open" }))).toBe(false);
    expect(isFitForStudy(studyCase(three, { causes: [{ cause: "dent", role: "contributing" }] }))).toBe(
      false,
    );
    expect(isFitForStudy(studyCase([fixed, ...three]))).toBe(false);
    expect(isFitForStudy(studyCase([...three.slice(1), { repair: "clean", result: "no-change" }]))).toBe(
      false,
    );
  });
});

describe("the lines worth drawing", () => {
  const ids = ["a", "b", "c", "d", "e", "f"];
  const belief = (...causes: number[]) => ({ causes: Float64Array.from(causes), noneFits: 0 });
  const beliefs = [belief(0.1, 0.1, 0.1, 0.2, 0.5, 0), belief(0.1, 0.1, 0.6, 0.1, 0.1, 0)];

  it("are the root, what was named, then the most believed in at any time, at most four", () => {
    expect(beliefLines(beliefs, ids, ["f"], ["b"]).map(({ cause }) => cause)).toEqual(["f", "b", "c", "e"]);
  });

  it("hold one probability a belief, and leave out what the model does not know", () => {
    expect(beliefLines(beliefs, ids, ["c"], ["unheard-of"])[0]).toEqual({
      cause: "c",
      probabilities: [0.1, 0.6],
    });
    expect(beliefLines(beliefs, ids, [], ["unheard-of"]).map(({ cause }) => cause)).toEqual([
      "c",
      "e",
      "d",
      "a",
    ]);
  });
});
