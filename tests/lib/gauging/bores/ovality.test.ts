import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSquaresCircle } from "../../../../lib/gauging/bores/leastSquaresCircle";
import { ovality } from "../../../../lib/gauging/bores/ovality";
import { spreadOfAngles } from "../../../../lib/gauging/bores/spreadOfAngles";
import { seededNoise } from "../noise";

const radians = (deg: number) => (deg * Math.PI) / 180;
const ovalAt = (meanMm: number, amplitudeMm: number, widestDeg: number) => (angleDeg: number) => ({
  angleDeg,
  diameterMm: meanMm + 2 * amplitudeMm * Math.cos(2 * radians(angleDeg - widestDeg)),
});

function fitted(readings: Parameters<typeof ovality>[0]) {
  const found = ovality(readings);
  if (found.kind !== "fitted") throw new Error(found.kind);
  return found;
}

describe("ovality", () => {
  it("finds any oval again, from any three angles or more that are well apart", () => {
    const angles = fc
      .tuple(
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 50, max: 80 }),
        fc.integer({ min: 110, max: 140 }),
      )
      .chain((three) =>
        fc.array(fc.integer({ min: -360, max: 360 }), { maxLength: 5 }).map((more) => [...three, ...more]),
      );
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 20, noNaN: true }),
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        fc.double({ min: 1, max: 179, noNaN: true }),
        angles,
        (meanMm, amplitudeMm, widestDeg, anglesDeg) => {
          const found = fitted(anglesDeg.map(ovalAt(meanMm, amplitudeMm, widestDeg)));
          expect(found.meanMm).toBeCloseTo(meanMm, 9);
          expect(found.amplitudeMm).toBeCloseTo(amplitudeMm, 9);
          expect(found.widestDeg).toBeCloseTo(widestDeg, 5);
        },
      ),
    );
  });

  it("does not answer from fewer than three different angles, a half turn being the same diameter", () => {
    const readings = [0, 1, 60, 180, 240].map(ovalAt(17, 0.01, 30));
    expect(ovality(readings)).toMatchObject({ kind: "too few readings", distinctAngles: 2 });
    expect(ovality([])).toMatchObject({ kind: "too few readings", distinctAngles: 0 });
  });

  it("gives no direction to a round bore", () => {
    expect(fitted([0, 60, 120, 170].map(ovalAt(17, 0, 0)))).toMatchObject({ widestDeg: null });
  });

  it("reads a three-lobed bore as round, and says that it cannot see one", () => {
    // Radii r(t) = 8.5 + .01 cos 3t; a diameter is r(t) + r(t + 180), where the lobes cancel.
    const radiusMm = (deg: number) => 8.5 + 0.01 * Math.cos(3 * radians(deg));
    const found = fitted(
      [0, 30, 60, 90, 120, 150].map((angleDeg) => ({
        angleDeg,
        diameterMm: radiusMm(angleDeg) + radiusMm(angleDeg + 180),
      })),
    );
    expect(found.meanMm).toBeCloseTo(17, 12);
    expect(found.amplitudeMm).toBeCloseTo(0, 12);
    expect(found.notes.join(" ")).toContain("three-lobed");
  });

  it("gives no standard errors from three readings, and says why", () => {
    const found = fitted([0, 60, 120].map(ovalAt(17, 0.01, 30)));
    expect(found.standardErrors).toBeNull();
    expect(found.notes.join(" ")).toContain("Three readings leave none over");
  });

  it("says when the readings crowd into less than half of the turn", () => {
    expect(fitted([0, 20, 40].map(ovalAt(17, 0.01, 30))).notes.join(" ")).toContain("140 degrees");
    expect(fitted([0, 60, 120].map(ovalAt(17, 0.01, 30))).notes.join(" ")).not.toContain(
      "spread them evenly",
    );
  });

  it("shows a dent as the reading that stands out", () => {
    const readings = [0, 20, 40, 60, 80, 100, 120, 140, 160].map(ovalAt(17, 0.005, 10));
    const dented = readings.map((reading) =>
      reading.angleDeg === 80 ? { ...reading, diameterMm: reading.diameterMm - 0.08 } : reading,
    );
    const { residualsMm } = fitted(dented);
    const worst = residualsMm.reduce((at, mm, index) => (mm < (residualsMm[at] ?? 0) ? index : at), 0);
    expect(worst).toBe(4);
  });

  it("has standard errors that match the scatter over many noisy bores", () => {
    const angles = [0, 30, 60, 90, 120, 150];
    // A fixed linear congruential sequence (Numerical Recipes' constants); three uniforms summed are near enough normal.
    let state = 20_240_607;
    const uniform = () => {
      state = (1_664_525 * state + 1_013_904_223) % 2 ** 32;
      return state / 2 ** 32 - 0.5;
    };
    const noiseMm = () => 0.002 * 2 * (uniform() + uniform() + uniform());
    const bores = Array.from({ length: 2000 }, () =>
      fitted(
        angles.map((deg) => {
          const reading = ovalAt(17, 0.02, 40)(deg);
          return { ...reading, diameterMm: reading.diameterMm + noiseMm() };
        }),
      ),
    );
    const meanOf = (values: readonly number[]) =>
      values.reduce((sum, value) => sum + value, 0) / values.length;
    const scatter = Math.sqrt(meanOf(bores.map(({ amplitudeMm }) => (amplitudeMm - 0.02) ** 2)));
    const claimed = Math.sqrt(
      meanOf(bores.map(({ standardErrors }) => (standardErrors?.amplitudeMm ?? 0) ** 2)),
    );
    expect(claimed / scatter).toBeGreaterThan(0.93);
    expect(claimed / scatter).toBeLessThan(1.07);
    const turned = Math.sqrt(meanOf(bores.map(({ widestDeg }) => ((widestDeg ?? 0) - 40) ** 2)));
    const claimedDeg = Math.sqrt(
      meanOf(bores.map(({ standardErrors }) => (standardErrors?.widestDeg ?? 0) ** 2)),
    );
    expect(claimedDeg / turned).toBeGreaterThan(0.93);
    expect(claimedDeg / turned).toBeLessThan(1.07);
  });

  it("recovers random ovals within its standard errors as often as those say", () => {
    const angles = [0, 20, 40, 60, 80, 100, 120, 140, 160];
    // Nine readings less three figures leave six degrees of freedom: 95 in 100 lie within t(.975, 6) = 2.4469.
    const t = 2.4469;
    const noise = seededNoise(20_240_607);
    const random = seededNoise(7);
    const bores = Array.from({ length: 2000 }, () => {
      const [meanMm, amplitudeMm] = [17 + random(), 0.02 + 0.005 * Math.abs(random())];
      const widestDeg = 90 + 20 * random();
      const readings = angles.map(ovalAt(meanMm, amplitudeMm, widestDeg));
      const found = fitted(
        readings.map((reading) => ({ ...reading, diameterMm: reading.diameterMm + 0.002 * noise() })),
      );
      const holds = (error: number, standard: number | null | undefined) =>
        Math.abs(error) <= t * (standard ?? 0);
      return {
        mean: holds(found.meanMm - meanMm, found.standardErrors?.meanMm),
        amplitude: holds(found.amplitudeMm - amplitudeMm, found.standardErrors?.amplitudeMm),
        widest: holds((found.widestDeg ?? 0) - widestDeg, found.standardErrors?.widestDeg),
      };
    });
    for (const figure of ["mean", "amplitude", "widest"] as const) {
      const share = bores.filter((bore) => bore[figure]).length / bores.length;
      // Four binomial deviations of 2,000 draws at .95: sqrt(.95 x .05 / 2000) = .0049.
      expect(Math.abs(share - 0.95)).toBeLessThan(0.0195);
    }
  });

  it("refuses a reading without a size", () => {
    expect(() => ovality([{ angleDeg: 0, diameterMm: -1 }])).toThrow("got 0 degrees, -1 mm");
  });
});

describe("leastSquaresCircle", () => {
  it("finds the circle and centre again, from unevenly spread angles", () => {
    const readings = [0, 35, 90, 170, 200, 310].map((angleDeg) => ({
      angleDeg,
      radiusMm: 8.5 + 0.004 * Math.cos(radians(angleDeg)) + 0.003 * Math.sin(radians(angleDeg)),
    }));
    const circle = leastSquaresCircle(readings);
    if (circle.kind !== "fitted") throw new Error(circle.kind);
    expect(circle.radiusMm).toBeCloseTo(8.5, 12);
    expect(circle.centreMm.x).toBeCloseTo(0.004, 12);
    expect(circle.centreMm.y).toBeCloseTo(0.003, 12);
    expect(circle.peakToValleyMm).toBeCloseTo(0, 12);
  });

  it("does not answer from fewer than three different angles", () => {
    const readings = [0, 180, 360, 182].map((angleDeg) => ({ angleDeg, radiusMm: 8.5 }));
    expect(leastSquaresCircle(readings)).toMatchObject({ kind: "too few readings", distinctAngles: 2 });
  });

  it("refuses a radius that is none", () => {
    expect(() => leastSquaresCircle([{ angleDeg: 0, radiusMm: 0 }])).toThrow("got 0 degrees, 0 mm");
  });
});

describe("spreadOfAngles", () => {
  it("counts round the turn, so that 359 and 1 are neighbours", () => {
    expect(spreadOfAngles([1, 359, 120, 240], 360)).toEqual({ distinct: 3, widestGapDeg: 120 });
  });

  it("does not take a fine sweep for one angle", () => {
    const sweep = Array.from({ length: 360 }, (_, deg) => deg);
    expect(spreadOfAngles(sweep, 360)).toEqual({ distinct: 72, widestGapDeg: 1 });
  });
});
