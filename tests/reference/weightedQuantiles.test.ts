import { describe, expect, it } from "vitest";
import { weightedQuantile } from "../../lib/estimate/weightedQuantile";

/** Sources: Hyndman & Fan 1996, type 7 (R's default); Akinshin 2023 with Kish's effective size for the weighted form. */
const values = [1, 2, 4, 7, 11, 16];
const levels = [0.1, 0.25, 0.5, 0.75, 0.9];

describe("weighted quantiles", () => {
  it("with equal weights are 1.5 2.5 5.5 10 13.5", () => {
    const found = levels.map((p) => weightedQuantile(values, [1, 1, 1, 1, 1, 1], p));
    for (const [index, expected] of [1.5, 2.5, 5.5, 10, 13.5].entries())
      expect(found[index]).toBeCloseTo(expected, 12);
  });

  it("with weights 1 2 1 3 1 2 are 1.9 3 7 9 14", () => {
    const found = levels.map((p) => weightedQuantile(values, [1, 2, 1, 3, 1, 2], p));
    for (const [index, expected] of [1.9, 3, 7, 9, 14].entries())
      expect(found[index]).toBeCloseTo(expected, 12);
  });
});
