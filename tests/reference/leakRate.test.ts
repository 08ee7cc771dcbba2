import { expect, it } from "vitest";
import { leakRate } from "../../lib/gauging/fits/leakRate";

/**
 * Source: 40 CFR 1065.644, the worked example of a vacuum-decay leak: 2 l, from 25.3 to 50.6 kPa absolute in 70 s at 293.15 K,
 * R = 8.314472 J/(mol K); n = (V / R) (p2 / T - p1 / T) / t = 0.00030 mol/s (its last figure set down from memory).
 */
it("a vacuum that fills with 0.00030 mol/s leaks as much by the fall of its pressure", () => {
  const roomPa = 101_325;
  const { mlPerMinute } = leakRate({
    volumeMl: 2000,
    firstPa: 25_300 - roomPa,
    secondPa: 50_600 - roomPa,
    seconds: 70,
    roomPa,
  });
  // Volume at the room's pressure to amount: n = p V / (R T).
  const molPerSecond = (roomPa * (mlPerMinute / 60) * 1e-6) / (8.314472 * 293.15);
  expect(molPerSecond).toBeCloseTo(((0.002 / 8.314472) * (50_600 - 25_300)) / 293.15 / 70, 12);
  expect(molPerSecond.toFixed(5)).toBe("0.00030");
});
