import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chanceOver,
  curveShares,
  minutesCurve,
  minutesWithin,
  stretchCurve,
} from "@/lib/estimate/minutesCurve";

const job = fc.record({
  minutes: fc.double({ min: 1, max: 5000, noNaN: true }),
  weight: fc.double({ min: 0.001, max: 1, noNaN: true }),
});
const jobs = fc.array(job, { minLength: 1, maxLength: 30 });
const factors = fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { minLength: 19, maxLength: 19 });

/** Twenty-one evenly spaced jobs: the type 7 quantile is 200 p. */
const even = Array.from({ length: 21 }, (_, at) => ({ minutes: 10 * at, weight: 1 }));

describe("a curve of minutes", () => {
  it("holds the quantiles of the like jobs, and straight lines between them", () => {
    const curve = minutesCurve(even);
    expect(minutesWithin(curve, 0.5)).toBeCloseTo(100, 9);
    expect(minutesWithin(curve, 0.8)).toBeCloseTo(160, 9);
    expect(minutesWithin(curve, 0.825)).toBeCloseTo(165, 9);
    expect(minutesWithin(curve, 0.99)).toBeCloseTo(190, 9);
    expect(chanceOver(curve, 160)).toBeCloseTo(0.2, 9);
    expect(chanceOver(curve, 165)).toBeCloseTo(0.175, 9);
    expect(chanceOver(curve, 0)).toBeCloseTo(1, 9);
  });

  it("promises nothing beyond nineteen jobs in twenty", () => {
    expect(chanceOver(minutesCurve(even), 1e9)).toBeCloseTo(0.05, 9);
  });

  it("stretched, never falls, and is multiplied where the factors rise", () => {
    fc.assert(
      fc.property(jobs, factors, (some, by) => {
        const plain = minutesCurve(some);
        const curve = stretchCurve(plain, by);
        expect(curve).toHaveLength(curveShares.length);
        curve.forEach((minutes, at) => {
          expect(minutes).toBeGreaterThanOrEqual((plain[at] ?? 0) * (by[at] ?? 1));
          expect(minutes).toBeGreaterThanOrEqual(curve[at - 1] ?? 0);
        });
        expect(stretchCurve(plain, [])).toEqual(plain);
      }),
    );
  });

  it("gives chances that fall with the minutes, and that come back from the minutes within a share", () => {
    fc.assert(
      fc.property(
        jobs,
        fc.double({ min: 0, max: 6000, noNaN: true }),
        fc.double({ min: 0, max: 100 }),
        (some, from, more) => {
          const curve = minutesCurve(some);
          expect(chanceOver(curve, from)).toBeGreaterThanOrEqual(chanceOver(curve, from + (more || 0)));
          for (const share of [0.3, 0.5, 0.8]) {
            // Not over where several shares end at the same minute.
            expect(chanceOver(curve, minutesWithin(curve, share))).toBeLessThanOrEqual(1 - share + 1e-9);
          }
        },
      ),
    );
  });
});
