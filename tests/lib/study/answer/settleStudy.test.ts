import { describe, expect, it } from "vitest";
import { settleStudy } from "@/lib/study/answer/settleStudy";
import { found, studyBench, studyCase } from "../studyBench";

const kase = studyCase([found("dirt-seen", "no"), found("dent-seen", "yes")]);
const sent = {
  asked: ["dent-seen"],
  rows: [{ cause: "dent", sure: "70" }],
  repair: "raise",
  first: "dent-seen",
};
const settle = (fields: Partial<typeof sent> = {}) =>
  settleStudy(kase, { ...sent, ...fields }, studyBench.vocabulary);

describe("an answer that was sent", () => {
  it("is taken as it is where it holds", () => {
    expect(settle()).toEqual({
      answer: {
        asked: ["dent-seen"],
        named: [{ cause: "dent", sure: 0.7 }],
        repair: "raise",
        first: "dent-seen",
      },
      problems: [],
    });
  });

  it("loses checks that do not count, and what the vocabulary does not know", () => {
    const { answer } = settle({
      asked: ["bore-look", "dent-seen", "zither"],
      repair: "zither",
      first: "zither",
    });
    // The bore is not seen before the cap is off.
    expect(answer).toMatchObject({ asked: ["dent-seen"], repair: undefined, first: undefined });
  });

  it("cannot name a cause that this instrument does not have", () => {
    const { answer, problems } = settle({ rows: [{ cause: "pad", sure: "70" }] });
    expect(answer).toBeUndefined();
    expect(problems).toEqual(["A cause must be one of the list; got 'pad'; choose it anew."]);
  });
});
