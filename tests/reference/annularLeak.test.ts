import { describe, expect, it } from "vitest";
import { annularLeak } from "../../lib/gauging/fits/annularLeak";
import { readLength } from "../../lib/gauging/lengths/readLength";

/** Source: Rabie, Fluid Power Engineering, eq. 2.19; D 16.8 mm, L 20 mm, dP 3 kPa, air of 1.81e-5 Pa s. */
describe("leak through the gap round a piston, dry and concentric", () => {
  it.each([
    [".001 in", 4.4797],
    [".002 in", 35.8379],
    [".003 in", 120.953],
  ])("a diametral clearance of %s leaks %f mL/min", (text, mlPerMinute) => {
    const read = readLength(text);
    if (read.kind !== "length") throw new Error(read.kind);
    const leak = annularLeak({
      diameterMm: 16.8,
      clearanceMm: read.mm,
      lengthMm: 20,
      pressurePa: 3000,
      viscosityPaS: 1.81e-5,
    });
    expect(leak).toBeCloseTo(mlPerMinute, 4);
  });
});
