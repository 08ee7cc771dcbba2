import { describe, expect, it } from "vitest";
import { estimateMinutes } from "../../../lib/estimate/estimateMinutes";

describe("estimateMinutes", () => {
  it("gives no estimate from no cases, or from cases without weight", () => {
    expect(estimateMinutes([])).toBeUndefined();
    expect(estimateMinutes([{ minutes: 30, weight: 0 }])).toBeUndefined();
  });

  it("takes one case for all it has, and says that it is thin", () => {
    expect(estimateMinutes([{ minutes: 45, weight: 0.3 }])).toEqual({
      p50: 45,
      p80: 45,
      p95: 45,
      cases: 1,
      effectiveCases: 1,
      thin: true,
    });
  });

  it("reads type 7 quantiles off equally alike cases", () => {
    const cases = Array.from({ length: 21 }, (_, index) => ({ minutes: 10 * index, weight: 0.5 }));
    const found = estimateMinutes(cases);
    expect(found).toMatchObject({ cases: 21, thin: false });
    // Twenty-one evenly spaced cases: the quantile is 200 p.
    expect(found?.p50).toBeCloseTo(100, 9);
    expect(found?.p80).toBeCloseTo(160, 9);
    expect(found?.p95).toBeCloseTo(190, 9);
    expect(found?.effectiveCases).toBeCloseTo(21, 9);
  });

  it("is thin when a single case outweighs many", () => {
    const many = Array.from({ length: 20 }, () => ({ minutes: 30, weight: 0.01 }));
    expect(estimateMinutes([...many, { minutes: 90, weight: 1 }])).toMatchObject({ cases: 21, thin: true });
  });

  it("refuses minutes below 0", () => {
    expect(() => estimateMinutes([{ minutes: -5, weight: 1 }])).toThrow("got -5 min with 1");
  });
});
