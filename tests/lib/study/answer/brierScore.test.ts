import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brierScore } from "@/lib/study/answer/brierScore";

const say = (sures: Readonly<Record<string, number>>) =>
  Object.entries(sures).map(([cause, sure]) => ({ cause, sure }));

describe("the score of a stated confidence", () => {
  it("is 0 for sure and right, 2 for sure and wrong", () => {
    expect(brierScore(say({ a: 1 }), ["a"])).toBe(0);
    expect(brierScore(say({ b: 1 }), ["a"])).toBe(2);
  });

  it("takes what is left over for something else: 70 and right is 0.3 squared twice", () => {
    expect(brierScore(say({ a: 0.7 }), ["a"])).toBeCloseTo(0.18, 12);
  });

  it("adds the squares of all that was named: a 0.5 right, b 0.3 wrong, 0.2 left", () => {
    expect(brierScore(say({ a: 0.5, b: 0.3 }), ["a"])).toBeCloseTo(0.25 + 0.09 + 0.04, 12);
  });

  it("counts what was left over as right where the cause was not named: b 0.4, 0.6 left", () => {
    expect(brierScore(say({ b: 0.4 }), ["a"])).toBeCloseTo(0.16 + 0.16, 12);
  });

  it("counts what was put on two root causes together", () => {
    expect(brierScore(say({ a: 0.5, b: 0.5 }), ["a", "b"])).toBe(0);
    expect(brierScore(say({ a: 0.6 }), ["a", "b"])).toBeCloseTo(0.32, 12);
  });

  it("knows no left over under 0, however the decimals of 100 add up", () => {
    expect(brierScore(say({ a: 0.1, b: 0.2, c: 0.7 }), ["a"])).toBeCloseTo(0.81 + 0.04 + 0.49, 12);
  });

  it("is proper: on average nothing scores better than saying what one believes", () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(chance, chance, (belief, stated) => {
        const expected = (sure: number) =>
          belief * brierScore(say({ a: sure }), ["a"]) + (1 - belief) * brierScore(say({ a: sure }), ["z"]);
        expect(expected(belief)).toBeLessThanOrEqual(expected(stated) + 1e-12);
      }),
    );
  });
});
