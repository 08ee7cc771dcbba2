import { describe, expect, it } from "vitest";
import { leastSquaresCircle } from "../../lib/gauging/bores/leastSquaresCircle";
import { ovality } from "../../lib/gauging/bores/ovality";

/**
 * Model: d(t) = D + 2a cos 2(t - phi). The fits and their standard errors were recomputed with numpy's lstsq and the usual
 * covariance s^2 (X'X)^-1; the circle's terms are those of ISO 12181-1.
 */
const degrees = [0, 30, 60, 90, 120, 150];

function fitOf(anglesDeg: readonly number[], diametersMm: readonly number[]) {
  const found = ovality(
    anglesDeg.map((angleDeg, index) => ({ angleDeg, diameterMm: diametersMm[index] ?? 0 })),
  );
  if (found.kind !== "fitted") throw new Error(found.kind);
  return found;
}

describe("ovality", () => {
  it("D 17, a .010, phi 30 come back from the diameters that they make", () => {
    const found = fitOf(degrees, [17.01, 17.02, 17.01, 16.99, 16.98, 16.99]);
    expect(found.meanMm).toBeCloseTo(17, 12);
    expect(found.amplitudeMm).toBeCloseTo(0.01, 12);
    expect(found.widestDeg).toBeCloseTo(30, 9);
  });

  it("noisy readings give D 17.000000, a .010109, phi 27.9531, with their standard errors", () => {
    const found = fitOf(degrees, [17.012, 17.018, 17.011, 16.988, 16.979, 16.992]);
    expect(found.meanMm).toBeCloseTo(17, 9);
    expect(found.amplitudeMm).toBeCloseTo(0.010109, 6);
    expect(found.widestDeg).toBeCloseTo(27.9531, 4);
    expect(found.standardErrors?.meanMm).toBeCloseTo(0.000805076, 9);
    expect(found.standardErrors?.amplitudeMm).toBeCloseTo(0.000569275, 9);
    expect(found.standardErrors?.widestDeg).toBeCloseTo(1.613248, 6);
  });

  it("four readings give a .009991, phi 29.9853", () => {
    const found = fitOf([0, 45, 90, 135], [17.01, 17.0173, 16.99, 16.9827]);
    expect(found.meanMm).toBeCloseTo(17, 9);
    expect(found.amplitudeMm).toBeCloseTo(0.009991, 6);
    expect(found.widestDeg).toBeCloseTo(29.9853, 4);
  });

  it("unevenly spread readings give the same fit and errors as numpy", () => {
    const found = fitOf([0, 20, 75, 100, 160], [17.012, 17.018, 17.001, 16.988, 16.994]);
    expect(found.meanMm).toBeCloseTo(17.000788614583, 10);
    expect(found.amplitudeMm).toBeCloseTo(0.009760121637, 10);
    expect(found.widestDeg).toBeCloseTo(31.824588901, 7);
    expect(found.standardErrors?.meanMm).toBeCloseTo(0.001226527452, 10);
    expect(found.standardErrors?.amplitudeMm).toBeCloseTo(0.001172721834, 10);
    expect(found.standardErrors?.widestDeg).toBeCloseTo(2.374326226, 7);
  });

  it("360 radii give R 8.5, centre (.004, .003), RONt .020, RONq .007071", () => {
    const turn = (deg: number) => (deg * Math.PI) / 180;
    const circle = leastSquaresCircle(
      Array.from({ length: 360 }, (_, deg) => ({
        angleDeg: deg,
        radiusMm:
          8.5 +
          0.01 * Math.cos(2 * turn(deg - 30)) +
          0.004 * Math.cos(turn(deg)) +
          0.003 * Math.sin(turn(deg)),
      })),
    );
    if (circle.kind !== "fitted") throw new Error(circle.kind);
    expect(circle.radiusMm).toBeCloseTo(8.5, 12);
    expect(circle.centreMm.x).toBeCloseTo(0.004, 12);
    expect(circle.centreMm.y).toBeCloseTo(0.003, 12);
    expect(circle.peakToValleyMm).toBeCloseTo(0.02, 12);
    expect(circle.rootMeanSquareMm).toBeCloseTo(0.007071, 6);
  });
});
