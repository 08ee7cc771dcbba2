import { describe, expect, it } from "vitest";
import { whenEnough } from "@/lib/study/review/whenEnough";

const ids = ["a", "b"];
const beliefs = (...rows: readonly (readonly [number, number])[]) =>
  rows.map(([a, b]) => ({ causes: Float64Array.of(a, b), noneFits: 1 - a - b }));
const enough = (...rows: readonly (readonly [number, number])[]) => whenEnough(beliefs(...rows), ids);

describe("when the evidence had spoken", () => {
  it("is after the first check that left one cause over 80 in 100, while more were made", () => {
    expect(enough([0.5, 0.4], [0.6, 0.3], [0.85, 0.1], [0.9, 0.05])).toEqual({
      after: 2,
      cause: "a",
      probability: 0.85,
      overturned: false,
    });
  });

  it("is never where 80 was only reached, or reached by the last check", () => {
    expect(enough([0.5, 0.4], [0.8, 0.1], [0.75, 0.2])).toBeNull();
    expect(enough([0.5, 0.4], [0.9, 0.1])).toBeNull();
    expect(enough([0.9, 0.1])).toBeNull();
  });

  it("says where what came later put another cause in front", () => {
    expect(enough([0.5, 0.4], [0.85, 0.1], [0.3, 0.6])?.overturned).toBe(true);
  });
});
