import { describe, expect, it } from "vitest";
import { fitClearance } from "../../lib/gauging/fits/fitClearance";
import { isoSteps, isoZone } from "../../lib/gauging/fits/isoTolerances";

/** Source: ISO 286-2, limit deviations for nominal sizes over 10 up to 18 mm (set down from memory). */
describe("ISO 286 fits over 10 to 18 mm", () => {
  it.each([
    ["H6", 11, 0],
    ["H7", 18, 0],
    ["f7", -16, -34],
    ["g5", -6, -14],
    ["g6", -6, -17],
    ["h6", 0, -11],
  ] as const)("has the zone %s from %i to %i micrometres", (zone, upperUm, lowerUm) => {
    expect(isoZone(zone, 17)).toEqual({ upperUm, lowerUm });
  });

  it.each([
    ["H7", "g6", 0.006, 0.035],
    ["H6", "g5", 0.006, 0.025],
    ["H7", "f7", 0.016, 0.052],
    ["H7", "h6", 0, 0.029],
  ] as const)("%s/%s has clearances of %f to %f mm", (hole, shaft, leastMm, mostMm) => {
    const found = fitClearance(hole, shaft, 17);
    expect(found?.leastMm).toBeCloseTo(leastMm, 12);
    expect(found?.mostMm).toBeCloseTo(mostMm, 12);
  });
});

/**
 * The standard tolerances by their formula. Source: ISO 286-1:1988, annex A.3: i = 0.45 D^(1/3) + 0.001 D, D the geometric mean
 * of the step; IT5 = 7 i, IT6 = 10 i, IT7 = 16 i.
 */
describe("ISO 286 standard tolerances", () => {
  const unit = (over: number, upTo: number) => {
    const mean = Math.sqrt(over * upTo);
    return 0.45 * Math.cbrt(mean) + 0.001 * mean;
  };
  const rows = isoSteps.map((step) => [step.over, step.upTo, step] as const);

  it.each(rows.filter(([over]) => over >= 18))(
    "over %i to %i mm are the formula's, rounded",
    (over, upTo, step) => {
      const i = unit(over, upTo);
      expect([step.it5, step.it6, step.it7]).toEqual([7 * i, 10 * i, 16 * i].map(Math.round));
    },
  );

  it.each(rows)("over %i to %i mm lie within a micrometre of the formula", (over, upTo, step) => {
    const i = unit(over, upTo);
    for (const [um, times] of [
      [step.it5, 7],
      [step.it6, 10],
      [step.it7, 16],
    ] as const)
      expect(Math.abs(um - times * i)).toBeLessThan(1);
  });

  it("are those of the published table", () => {
    // Source: ISO 286-1, table 1, as handbooks reprint it.
    expect(isoSteps.map(({ it5, it6, it7 }) => [it5, it6, it7])).toEqual([
      [6, 9, 15],
      [8, 11, 18],
      [9, 13, 21],
      [11, 16, 25],
      [13, 19, 30],
    ]);
  });
});

/** Source: ISO 286-1:1988, annex A.4 (set down from memory): f = 5.5 D^0.41, g = 2.5 D^0.34, rounded to micrometres. */
it.each(isoSteps.map((step) => [step.over, step.upTo, step] as const))(
  "the deviations of f and g over %i to %i mm are their formulas', rounded",
  (over, upTo, { f, g }) => {
    const mean = Math.sqrt(over * upTo);
    expect([f, g]).toEqual([5.5 * mean ** 0.41, 2.5 * mean ** 0.34].map(Math.round));
  },
);
