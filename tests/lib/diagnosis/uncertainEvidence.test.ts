import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { uncertainEvidence } from "@/lib/diagnosis/uncertainEvidence";

const ratio = fc.double({ min: 0.01, max: 1, noNaN: true });

describe("uncertainEvidence", () => {
  it("mixes what each finding would say by how probable it is: worked by hand", () => {
    // Means .5 and .4. First cause: .6 x .8/.5 + .3 x .2/.4 + .1 = 1.21; second: .6 x .2/.5 + .3 x .6/.4 + .1 = .79.
    const logs = uncertainEvidence(
      [
        { likelihoods: Float64Array.of(0.8, 0.2), share: 0.6 },
        { likelihoods: Float64Array.of(0.2, 0.6), share: 0.3 },
      ],
      2,
    );
    expect(Math.exp(logs[0] ?? 0)).toBeCloseTo(1.21, 12);
    expect(Math.exp(logs[1] ?? 0)).toBeCloseTo(0.79, 12);
  });

  /* Source: Jeffrey 1965, chapter 11: a certain finding is the ordinary case of an uncertain one. */
  it("is the finding's own evidence, up to a constant, where there is no doubt, and nothing where there is no finding", () => {
    fc.assert(
      fc.property(ratio, ratio, ratio, (a, b, c) => {
        const likelihoods = Float64Array.of(a, b, c);
        const logs = uncertainEvidence([{ likelihoods, share: 1 }], 3);
        const apart = (x: number, y: number) => (logs[x] ?? 0) - (logs[y] ?? 0);
        expect(apart(0, 1)).toBeCloseTo(Math.log(a / b), 9);
        expect(apart(1, 2)).toBeCloseTo(Math.log(b / c), 9);
      }),
    );
    expect([...uncertainEvidence([], 3)]).toEqual([0, 0, 0]);
  });

  it("says the less the less probable the finding is", () => {
    const likelihoods = Float64Array.of(0.9, 0.1);
    const apart = (share: number) => {
      const [a = 0, b = 0] = uncertainEvidence([{ likelihoods, share }], 2);
      return a - b;
    };
    for (const [less, more] of [
      [0, 0.2],
      [0.2, 0.6],
      [0.6, 1],
    ])
      expect(apart(less ?? 0)).toBeLessThan(apart(more ?? 0));
  });
});
