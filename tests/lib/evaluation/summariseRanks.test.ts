import { describe, expect, it } from "vitest";
import { summariseRanks } from "@/lib/evaluation/summariseRanks";

describe("summariseRanks", () => {
  it("counts who came first, among the first two and three, and the mean of one over the rank", () => {
    expect(summariseRanks([1, 3])).toEqual({ n: 2, hit1: 0.5, hit2: 0.5, hit3: 1, mrr: 0.6667 });
    expect(summariseRanks([1, 2, 4, 1])).toEqual({ n: 4, hit1: 0.5, hit2: 0.75, hit3: 0.75, mrr: 0.6875 });
  });

  it("counts what did not come at all as nothing", () => {
    expect(summariseRanks([Number.POSITIVE_INFINITY, 1])).toEqual({
      n: 2,
      hit1: 0.5,
      hit2: 0.5,
      hit3: 0.5,
      mrr: 0.5,
    });
  });

  it("is all 0 for no ranks", () => {
    expect(summariseRanks([])).toEqual({ n: 0, hit1: 0, hit2: 0, hit3: 0, mrr: 0 });
  });
});
