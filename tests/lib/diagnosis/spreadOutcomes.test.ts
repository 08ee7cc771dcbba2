import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadOutcomes } from "@/lib/diagnosis/spreadOutcomes";

const spread = (told: Record<string, number>, background: readonly number[]) =>
  spreadOutcomes(["a", "b", "c"], new Map(Object.entries(told)), background);

describe("spreadOutcomes", () => {
  it("gives what is left to the others by their background", () => {
    // .2 is left; b and c stand 3 to 1 in the background: .15 and .05.
    const [a = 0, b = 0, c = 0] = spread({ a: 0.8 }, [0.2, 0.6, 0.2]);
    expect(a).toBeCloseTo(0.8, 12);
    expect(b).toBeCloseTo(0.15, 12);
    expect(c).toBeCloseTo(0.05, 12);
  });

  it("is the background where nothing is told", () => {
    for (const [at, p] of spread({}, [0.5, 0.3, 0.2]).entries())
      expect(p).toBeCloseTo([0.5, 0.3, 0.2][at] ?? 0, 12);
  });

  it("scales down what adds up to more than 1, keeping its ratios", () => {
    const [a = 0, b = 0, c = 0] = spread({ a: 0.9, b: 0.6 }, [0.2, 0.6, 0.2]);
    expect(a / b).toBeCloseTo(1.5, 12);
    expect(c).toBeGreaterThan(0);
  });

  it("passes over what is told of an outcome that is not there", () => {
    expect(spread({ z: 0.9 }, [0.5, 0.3, 0.2])).toEqual(spread({}, [0.5, 0.3, 0.2]));
  });

  it("adds up to 1 with every outcome over 0, so that no finding rules a cause out", () => {
    const probability = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.dictionary(fc.constantFrom("a", "b", "c"), probability),
        fc.tuple(probability, probability, probability),
        (told, raw) => {
          const total = raw.reduce((sum, value) => sum + value, 0);
          const background = total > 0 ? raw.map((value) => value / total) : [1, 0, 0];
          const values = spread(told, background);
          expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
          expect(Math.min(...values)).toBeGreaterThan(0);
        },
      ),
    );
  });
});
