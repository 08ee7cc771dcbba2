import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conformalLevel } from "@/lib/estimate/conformalLevel";

describe("conformalLevel", () => {
  it("is the k-th smallest score, k = ceil(p (n + 1))", () => {
    const scores = [5, 1, 4, 2, 3, 9, 8, 7, 6];
    expect(conformalLevel(scores, 0.8)).toBe(8);
    expect(conformalLevel(scores, 0.5)).toBe(5);
    expect(conformalLevel(scores, 0.1)).toBe(1);
    // More than nine scores can say: the greatest.
    expect(conformalLevel(scores, 0.95)).toBe(9);
    expect(conformalLevel(scores, 0)).toBe(1);
  });

  // Source: Vovk, Gammerman & Shafer 2005, theorem on conservative validity: ranks of exchangeable scores are uniform.
  it("leaving each of n + 1 different scores out in turn, covers ceil(p (n + 1)) of them exactly", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 60 }),
        fc.integer({ min: 1, max: 99 }),
        (scores, hundredths) => {
          const p = hundredths / 100;
          const rank = Math.ceil((hundredths * scores.length) / 100);
          const covered = scores.filter(
            (score, at) =>
              score <=
              conformalLevel(
                scores.filter((_, other) => other !== at),
                p,
              ),
          );
          // Where even the greatest of the others promises too little, all but the greatest are covered.
          expect(covered).toHaveLength(Math.min(rank, scores.length - 1));
        },
      ),
    );
  });

  it("refuses no scores, and a share beyond 1", () => {
    expect(() => conformalLevel([], 0.5)).toThrow("got none");
    expect(() => conformalLevel([1], 1.5)).toThrow("got 1.5");
  });
});
