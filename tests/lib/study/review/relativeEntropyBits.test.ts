import { describe, expect, it } from "vitest";
import { informationGainBits } from "@/lib/diagnosis/informationGain";
import { weighCauses } from "@/lib/diagnosis/posterior";
import { relativeEntropyBits } from "@/lib/study/review/relativeEntropyBits";
import { studyBench } from "../studyBench";

describe("bits taught", () => {
  it("is one bit for an even question answered for good", () => {
    expect(relativeEntropyBits([0.5, 0.5], [1, 0])).toBe(1);
  });

  it("is 0.531 from even to nine in ten: 0.9 log2 1.8 + 0.1 log2 0.2", () => {
    expect(relativeEntropyBits([0.5, 0.5], [0.9, 0.1])).toBeCloseTo(0.763197 - 0.232193, 5);
  });

  it("is 0 where belief did not move", () => {
    expect(relativeEntropyBits([0.2, 0.3, 0.5], [0.2, 0.3, 0.5])).toBe(0);
  });

  it("is without end where something held impossible has happened", () => {
    expect(relativeEntropyBits([1, 0], [0.5, 0.5])).toBe(Number.POSITIVE_INFINITY);
  });

  it("comes on average over what may be found to what the check was expected to tell", () => {
    const { model } = studyBench;
    const before = weighCauses(model, new Map());
    const all = ({ causes, noneFits }: typeof before) => [...causes, noneFits];
    const expected = ["no", "yes"].reduce((sum, outcome) => {
      const chance = model.causes.reduce(
        (total, _, row) =>
          total + (before.causes[row] ?? 0) * (model.likelihoods("dent-seen", outcome)?.[row] ?? 0),
        before.noneFits * 0.5,
      );
      const after = weighCauses(model, new Map([["dent-seen", outcome]]));
      return sum + chance * relativeEntropyBits(all(before), all(after));
    }, 0);
    expect(expected).toBeCloseTo(informationGainBits(model, before, "dent-seen"), 10);
  });
});
