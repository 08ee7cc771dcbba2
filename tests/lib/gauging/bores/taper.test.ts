import { describe, expect, it } from "vitest";
import { boreMap } from "../../../../lib/gauging/bores/boreMap";
import { taper } from "../../../../lib/gauging/bores/taper";
import { taperWords } from "../../../../lib/gauging/bores/taperWords";
import { lengthWords } from "../../../../lib/gauging/lengths/lengthWords";

const at = (depthMm: number, sizeMm: number, standardErrorMm: number | null = null) => ({
  depthMm,
  sizeMm,
  standardErrorMm,
});

describe("taper", () => {
  it("finds a straight taper again, in any order of the depths", () => {
    const found = taper([at(40, 17.02), at(10, 16.99), at(20, 17)]);
    if (found.kind !== "fitted") throw new Error(found.kind);
    expect(found.slope).toBeCloseTo(0.001, 12);
    expect(found.changeMm).toBeCloseTo(0.03, 12);
    expect([found.fromDepthMm, found.toDepthMm]).toEqual([10, 40]);
    expect(found.standardErrorMm).toBeNull();
  });

  it("carries the sizes' errors: over two depths they add as squares", () => {
    const found = taper([at(0, 17, 0.003), at(50, 17.01, 0.004)]);
    expect(found.kind === "fitted" && found.standardErrorMm).toBeCloseTo(0.005, 12);
  });

  it("shows a waist as the depth that stands out from the line", () => {
    const found = taper([at(0, 17), at(10, 17), at(20, 16.97), at(30, 17), at(40, 17)]);
    if (found.kind !== "fitted") throw new Error(found.kind);
    expect(found.residualsMm.indexOf(Math.min(...found.residualsMm))).toBe(2);
    expect(found.changeMm).toBeCloseTo(0, 12);
  });

  it("does not answer from one depth, however often it was measured", () => {
    expect(taper([at(10, 17), at(10, 17.1)]).kind).toBe("too few depths");
    expect(taper([]).kind).toBe("too few depths");
  });

  it("refuses a depth that is no number", () => {
    expect(() => taper([at(Number.NaN, 17), at(1, 17)])).toThrow("must be finite; got NaN");
  });

  it("is called none in words while it is under twice its error", () => {
    expect(taperWords(taper([at(0, 17, 0.003), at(50, 17.009, 0.004)]), lengthWords("mm"))).toMatch(
      /^No taper is shown from 0.0 mm to 50.0 mm/,
    );
    expect(taperWords(taper([at(0, 17, 0.001), at(50, 16.98, 0.001)]), lengthWords("mm"))).toMatch(
      /^The mean narrows by 0.020 mm, give or take 0.0014 mm/,
    );
  });
});

describe("boreMap", () => {
  const round = (diameterMm: number) => [0, 60, 120].map((angleDeg) => ({ angleDeg, diameterMm }));

  it("leaves sections without a depth or with too few readings out of the taper", () => {
    const { sections, taper: found } = boreMap([
      { depthMm: 10, readings: round(17) },
      { depthMm: null, readings: round(18) },
      { depthMm: 20, readings: round(19).slice(0, 1) },
      { depthMm: 30, readings: round(17.02) },
    ]);
    expect(sections.map(({ oval }) => oval.kind)).toEqual(["fitted", "fitted", "too few readings", "fitted"]);
    expect(found.kind === "fitted" && found.changeMm).toBeCloseTo(0.02, 12);
  });
});
