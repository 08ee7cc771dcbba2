import fc from "fast-check";
import { expect, it } from "vitest";
import { roundSimilarity, toShareGrid } from "@/lib/similarity/shareGrid";

const unit = fc.double({ min: 0, max: 1, noNaN: true });

it("a share is a whole number of steps of 2^-52, no more than half a step away", () => {
  fc.assert(
    fc.property(unit, (x) => {
      expect(Number.isInteger(toShareGrid(x) * 2 ** 52)).toBe(true);
      expect(Math.abs(toShareGrid(x) - x)).toBeLessThanOrEqual(2 ** -53);
    }),
  );
});

it("shares that make up at most 2 add up to the same in any order", () => {
  fc.assert(
    fc.property(fc.array(unit, { maxLength: 300 }), (numbers) => {
      const shares = numbers.map((x) => toShareGrid((2 * x) / Math.max(1, numbers.length)));
      const sum = (list: readonly number[]) => list.reduce((total, share) => total + share, 0);
      expect(sum([...shares].sort())).toBe(sum(shares));
    }),
  );
});

it("similarities are rounded to 12 decimals", () => {
  expect(roundSimilarity(1 / 3)).toBe(0.333333333333);
  expect(roundSimilarity(2 / 3)).toBe(0.666666666667);
  expect(roundSimilarity(1 - 2 ** -50)).toBe(1);
});
