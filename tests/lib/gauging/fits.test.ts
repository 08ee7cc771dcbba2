import { describe, expect, it } from "vitest";
import { annularLeak } from "../../../lib/gauging/fits/annularLeak";
import { fitClearance } from "../../../lib/gauging/fits/fitClearance";

const gap = { diameterMm: 17, clearanceMm: 0.05, lengthMm: 20, pressurePa: 3000, viscosityPaS: 1.81e-5 };

describe("fitClearance", () => {
  it("holds over 6 up to and including 80 mm and nowhere else", () => {
    expect(fitClearance("H7", "g6", 6)).toBeUndefined();
    expect(fitClearance("H7", "g6", 6.001)).toBeDefined();
    expect(fitClearance("H7", "g6", 80)).toBeDefined();
    expect(fitClearance("H7", "g6", 80.001)).toBeUndefined();
    expect(fitClearance("H7", "g6", Number.NaN)).toBeUndefined();
  });

  it("goes by the step that a size lies in, its upper end included", () => {
    expect(fitClearance("H7", "h6", 18)?.mostMm).toBeCloseTo(0.029, 12);
    expect(fitClearance("H7", "h6", 18.001)?.mostMm).toBeCloseTo(0.034, 12);
  });
});

describe("annularLeak", () => {
  it("grows as the cube of the clearance", () => {
    expect(annularLeak({ ...gap, clearanceMm: 0.1 }) / annularLeak(gap)).toBeCloseTo(8, 12);
  });

  it("is two and a half times as much when the piston lies against the wall", () => {
    expect(annularLeak({ ...gap, eccentricity: 1 }) / annularLeak(gap)).toBeCloseTo(2.5, 12);
  });

  it("is nothing without a gap or without pressure", () => {
    expect(annularLeak({ ...gap, clearanceMm: 0 })).toBe(0);
    expect(annularLeak({ ...gap, pressurePa: 0 })).toBe(0);
  });

  it.each([{ diameterMm: 0 }, { clearanceMm: -0.01 }, { eccentricity: 1.1 }, { viscosityPaS: Number.NaN }])(
    "refuses %j",
    (wrong) => {
      expect(() => annularLeak({ ...gap, ...wrong })).toThrow(RangeError);
    },
  );
});
