import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { numericSimilarity } from "@/lib/similarity/measures/numericSimilarity";

const point = (a: number, b: number, tolerance: number) => numericSimilarity(a, a, b, b, tolerance);

describe("numericSimilarity", () => {
  it("falls from 1 at no distance to 0 at the tolerance and stays there", () => {
    expect([0, 1, 2, 3, 4, 5].map((distance) => point(10, 10 + distance, 4))).toEqual([
      1, 0.75, 0.5, 0.25, 0, 0,
    ]);
  });

  it("counts the gap between intervals, and none where they overlap or touch", () => {
    expect(numericSimilarity(1, 1, 2, 3, 4)).toBe(0.75);
    expect(numericSimilarity(0, 2, 3, 9, 4)).toBe(0.75);
    expect(numericSimilarity(0, 5, 3, 9, 4)).toBe(1);
    expect(numericSimilarity(0, 3, 3, 9, 4)).toBe(1);
  });

  it("takes an infinite bound as reaching everything on its side", () => {
    expect(numericSimilarity(1, Number.POSITIVE_INFINITY, 50, 50, 4)).toBe(1);
    expect(numericSimilarity(1, Number.POSITIVE_INFINITY, 0, 0, 4)).toBe(0.75);
    expect(numericSimilarity(Number.NEGATIVE_INFINITY, 1, 3, Number.POSITIVE_INFINITY, 4)).toBe(0.5);
  });

  it("is symmetric, 1 on itself, in 0..1, and no greater at a greater distance", () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (a, b, tolerance) => {
        const similarity = point(a, b, tolerance);
        expect(similarity).toBe(point(b, a, tolerance));
        expect(point(a, a, tolerance)).toBe(1);
        expect(similarity).toBeGreaterThanOrEqual(0);
        expect(similarity).toBeLessThanOrEqual(1);
        expect(point(a, b + (b - a), tolerance)).toBeLessThanOrEqual(similarity);
      }),
    );
  });
});
