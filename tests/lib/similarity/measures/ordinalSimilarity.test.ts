import { expect, it } from "vitest";
import { ordinalSimilarity } from "@/lib/similarity/measures/ordinalSimilarity";

it("similarity on a scale falls evenly from 1 at the same place to 0 between the ends", () => {
  expect([0, 1, 2, 3, 4].map((rank) => ordinalSimilarity(0, rank, 5))).toEqual([1, 0.75, 0.5, 0.25, 0]);
  expect(ordinalSimilarity(0, 1, 3)).toBe(0.5);
});

it("a scale of one place has only one answer", () => {
  expect(ordinalSimilarity(0, 0, 1)).toBe(1);
});

it("a rank off the scale is refused", () => {
  expect(() => ordinalSimilarity(0, 3, 3)).toThrow("0..2; got 3");
  expect(() => ordinalSimilarity(-1, 0, 3)).toThrow("got -1");
});
