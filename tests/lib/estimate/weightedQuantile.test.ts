import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effectiveSize } from "../../../lib/estimate/effectiveSize";
import { weightedQuantile } from "../../../lib/estimate/weightedQuantile";

const weighed = fc.array(
  fc.tuple(fc.double({ min: 0, max: 1e4, noNaN: true }), fc.double({ min: 1e-3, max: 1e3, noNaN: true })),
  { minLength: 1, maxLength: 30 },
);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const split = (pairs: readonly (readonly [number, number])[]) =>
  [pairs.map(([value]) => value), pairs.map(([, weight]) => weight)] as const;

describe("weightedQuantile", () => {
  it("is Hyndman and Fan's type 7 when the weights are equal", () => {
    fc.assert(
      fc.property(weighed, share, (pairs, p) => {
        const sorted = pairs.map(([value]) => value).sort((one, other) => one - other);
        const at = p * (sorted.length - 1);
        const [below, above] = [sorted[Math.floor(at)] ?? 0, sorted[Math.ceil(at)] ?? 0];
        const expected = below + (at - Math.floor(at)) * (above - below);
        expect(
          weightedQuantile(
            sorted,
            sorted.map(() => 3),
            p,
          ),
        ).toBeCloseTo(expected, 6);
      }),
    );
  });

  it("does not care about the weights' scale or the values' order", () => {
    fc.assert(
      fc.property(weighed, share, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (pairs, p, scale) => {
        const [values, weights] = split(pairs);
        const expected = weightedQuantile(values, weights, p);
        expect(
          weightedQuantile(
            values,
            weights.map((weight) => weight * scale),
            p,
          ),
        ).toBeCloseTo(expected, 6);
        expect(weightedQuantile(values.toReversed(), weights.toReversed(), p)).toBeCloseTo(expected, 6);
      }),
    );
  });

  it("moves with the values when they are scaled and shifted", () => {
    fc.assert(
      fc.property(weighed, share, (pairs, p) => {
        const [values, weights] = split(pairs);
        const moved = weightedQuantile(
          values.map((value) => 2 * value + 5),
          weights,
          p,
        );
        expect(moved).toBeCloseTo(2 * weightedQuantile(values, weights, p) + 5, 6);
      }),
    );
  });

  it("lies between the least and the greatest value, and rises with p", () => {
    fc.assert(
      fc.property(weighed, share, share, (pairs, one, other) => {
        const [values, weights] = split(pairs);
        const lower = weightedQuantile(values, weights, Math.min(one, other));
        const upper = weightedQuantile(values, weights, Math.max(one, other));
        expect(lower).toBeGreaterThanOrEqual(Math.min(...values));
        expect(upper).toBeLessThanOrEqual(Math.max(...values));
        expect(upper).toBeGreaterThanOrEqual(lower - 1e-9);
      }),
    );
  });

  it("does not see a value without weight", () => {
    expect(weightedQuantile([1, 2, 1000], [1, 1, 0], 1)).toBe(2);
    expect(weightedQuantile([7], [0.2], 0.95)).toBe(7);
  });

  it("refuses what it cannot weigh", () => {
    expect(() => weightedQuantile([1], [], 0.5)).toThrow("got 1 values, 0 weights");
    expect(() => weightedQuantile([1], [-1], 0.5)).toThrow("got 1 with -1");
    expect(() => weightedQuantile([1], [1], 1.5)).toThrow("p must be in 0..1; got 1.5");
    expect(() => weightedQuantile([1], [0], 0.5)).toThrow("some value must carry weight");
  });
});

describe("effectiveSize", () => {
  it("lies between 1 and the number of weights above 0, which it reaches when they are equal", () => {
    fc.assert(
      fc.property(weighed, (pairs) => {
        const [, weights] = split(pairs);
        const size = effectiveSize(weights);
        expect(size).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(size).toBeLessThanOrEqual(weights.length * (1 + 1e-12));
      }),
    );
    expect(effectiveSize([0.3, 0.3, 0, 0.3])).toBeCloseTo(3, 12);
    expect(effectiveSize([0, 0])).toBe(0);
    expect(effectiveSize([])).toBe(0);
  });
});
