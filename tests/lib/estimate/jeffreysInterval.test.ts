import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { betaQuantile } from "../../../lib/estimate/betaQuantile";
import { jeffreysInterval } from "../../../lib/estimate/jeffreysInterval";
import { logGamma } from "../../../lib/estimate/logGamma";
import { regularizedBeta } from "../../../lib/estimate/regularizedBeta";

describe("jeffreysInterval", () => {
  it("holds the share seen, mirrors when hits and misses change places, and narrows with the level", () => {
    const counts = fc.nat(400).chain((n) => fc.nat(n).map((k) => [k, n] as const));
    fc.assert(
      fc.property(counts, ([k, n]) => {
        const wide = jeffreysInterval(k, n);
        if (n > 0) {
          expect(wide.low).toBeLessThanOrEqual(k / n);
          expect(wide.high).toBeGreaterThanOrEqual(k / n);
        }
        const mirrored = jeffreysInterval(n - k, n);
        expect(mirrored.low).toBeCloseTo(1 - wide.high, 10);
        expect(mirrored.high).toBeCloseTo(1 - wide.low, 10);
        const narrow = jeffreysInterval(k, n, 0.8);
        expect(narrow.high - narrow.low).toBeLessThanOrEqual(wide.high - wide.low);
      }),
      { numRuns: 60 },
    );
  });

  it("reaches 0 when it never happened, 1 when it always did, and knows nothing from nothing", () => {
    expect(jeffreysInterval(0, 10).low).toBe(0);
    expect(jeffreysInterval(10, 10).high).toBe(1);
    expect(jeffreysInterval(0, 0)).toEqual({ low: 0, high: 1 });
  });

  it("refuses more hits than tries, and a level in percent", () => {
    expect(() => jeffreysInterval(3, 2)).toThrow("got 3 of 2 at 0.95");
    expect(() => jeffreysInterval(1, 2, 95)).toThrow("got 1 of 2 at 95");
  });
});

describe("regularizedBeta", () => {
  it("is the polynomial that it must be for whole numbers: I_x(2, 3) = 6x^2 - 8x^3 + 3x^4", () => {
    for (const x of [0.05, 0.3, 0.5, 0.77, 0.99])
      expect(regularizedBeta(x, 2, 3)).toBeCloseTo(6 * x ** 2 - 8 * x ** 3 + 3 * x ** 4, 13);
  });

  it("refuses what is out of range", () => {
    expect(() => regularizedBeta(1.1, 1, 1)).toThrow("got 1.1, 1, 1");
  });
});

describe("betaQuantile", () => {
  it("undoes the regularised beta function", () => {
    const shape = fc.double({ min: 0.5, max: 200, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), shape, shape, (probability, a, b) => {
        expect(regularizedBeta(betaQuantile(probability, a, b), a, b)).toBeCloseTo(probability, 9);
      }),
      { numRuns: 60 },
    );
  });
});

describe("logGamma", () => {
  it("is the logarithm of the factorials, and of the root of pi at a half", () => {
    expect(logGamma(1)).toBeCloseTo(0, 14);
    expect(logGamma(11)).toBeCloseTo(Math.log(3_628_800), 13);
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 14);
  });

  it("refuses what is not above 0", () => {
    expect(() => logGamma(0)).toThrow("x must be above 0; got 0");
  });
});
