import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brierScore } from "@/lib/study/answer/brierScore";

const causes = ["a", "b", "c", "d"];
const score = (sures: Readonly<Record<string, number>>, roots: readonly string[]) =>
  brierScore(
    Object.entries(sures).map(([cause, sure]) => ({ cause, sure })),
    roots,
    causes,
  );

describe("the score of a stated confidence", () => {
  it("is 0 for sure and right, 2 for sure and wrong", () => {
    expect(score({ a: 1 }, ["a"])).toBe(0);
    expect(score({ b: 1 }, ["a"])).toBe(2);
  });

  it("spreads what is left over what was not named: 70 and right leaves 0.1 on each of three", () => {
    expect(score({ a: 0.7 }, ["a"])).toBeCloseTo(0.09 + 3 * 0.01, 12);
  });

  it("adds the squares of all causes: a 0.5 right, b 0.3 wrong, 0.1 on each of two", () => {
    expect(score({ a: 0.5, b: 0.3 }, ["a"])).toBeCloseTo(0.25 + 0.09 + 2 * 0.01, 12);
  });

  it("gives what was not named its part of what is left: b 0.4, 0.2 on each of three, one of them right", () => {
    expect(score({ b: 0.4 }, ["a"])).toBeCloseTo(0.64 + 0.16 + 2 * 0.04, 12);
  });

  it("does not reward naming next to nothing: a hundredth on a wrong cause has only ruled that one out", () => {
    expect(score({}, ["a"])).toBeCloseTo(0.75 ** 2 + 3 * 0.25 ** 2, 12);
    expect(score({ b: 0.01 }, ["a"])).toBeCloseTo(0.67 ** 2 + 0.01 ** 2 + 2 * 0.33 ** 2, 12);
  });

  it("counts what was put on two root causes together, named or not", () => {
    expect(score({ a: 0.5, b: 0.5 }, ["a", "b"])).toBe(0);
    expect(score({ a: 0.7 }, ["a", "b"])).toBeCloseTo(0.2 ** 2 + 2 * 0.01, 12);
  });

  it("takes what is left for none of them where every cause was named", () => {
    expect(score({ a: 0.4, b: 0.2, c: 0.1, d: 0.1 }, ["a"])).toBeCloseTo(0.36 + 0.04 + 0.02 + 0.04, 12);
  });

  it("knows no left over under 0, however the decimals of 100 add up", () => {
    expect(score({ a: 0.1, b: 0.2, c: 0.7 }, ["a"])).toBeCloseTo(0.81 + 0.04 + 0.49, 12);
  });

  it("is proper: on average nothing scores better than saying what one believes", () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    const others = causes.slice(1);
    fc.assert(
      fc.property(chance, chance, (belief, stated) => {
        const expected = (sure: number) =>
          belief * score({ a: sure }, ["a"]) +
          others.reduce(
            (sum, other) => sum + ((1 - belief) / others.length) * score({ a: sure }, [other]),
            0,
          );
        expect(expected(belief)).toBeLessThanOrEqual(expected(stated) + 1e-12);
      }),
    );
  });
});
