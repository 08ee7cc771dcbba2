import { describe, expect, it } from "vitest";
import { fitClearance } from "../../lib/gauging/fitClearance";
import { isoHoles, isoShafts } from "../../lib/gauging/isoTolerances";

/** Source: ISO 286-2, limit deviations for nominal sizes over 10 up to 18 mm (set down from memory). */
describe("ISO 286 fits over 10 to 18 mm", () => {
  it("has the zones H6 +11/0, H7 +18/0, f7 -16/-34, g5 -6/-14, g6 -6/-17, h6 0/-11 micrometres", () => {
    expect(isoHoles).toEqual({ H6: { upperUm: 11, lowerUm: 0 }, H7: { upperUm: 18, lowerUm: 0 } });
    expect(isoShafts).toEqual({
      f7: { upperUm: -16, lowerUm: -34 },
      g5: { upperUm: -6, lowerUm: -14 },
      g6: { upperUm: -6, lowerUm: -17 },
      h6: { upperUm: 0, lowerUm: -11 },
    });
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
