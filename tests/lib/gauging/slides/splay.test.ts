import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthWords } from "../../../../lib/gauging/lengths/lengthWords";
import { splay } from "../../../../lib/gauging/slides/splay";
import { splayWords } from "../../../../lib/gauging/slides/splayWords";

const at = (placeMm: number, acrossMm: number) => ({ placeMm, acrossMm });
const said = (...args: Parameters<typeof splay>) => splayWords(splay(...args), lengthWords("mm"));
function measured(...args: Parameters<typeof splay>) {
  const found = splay(...args);
  if (found.kind !== "measured") throw new Error(found.write);
  return found;
}

describe("splay", () => {
  it("is how much wider the far end stands, in any order of the readings", () => {
    const found = measured([at(600, 80.5), at(0, 80)]);
    expect([found.leastMm, found.mostMm, found.fromMm, found.toMm]).toEqual([0.5, 0.5, 0, 600]);
    // By hand: atan(0.5 / 600) = 0.0477 degrees.
    expect(found.angleDeg).toBeCloseTo(0.04775, 5);
    expect(found.bow).toBeNull();
  });

  it("takes either reading's doubt in full", () => {
    const found = measured([at(0, 80), at(600, 80.5)], 0.05);
    expect([found.leastMm, found.mostMm]).toEqual([0.4, 0.6]);
  });

  it("names the place between that stands farthest off the straight line", () => {
    const found = measured([at(0, 80), at(200, 80.3), at(400, 80.25), at(600, 80.6)]);
    expect(found.bow?.placeMm).toBe(400);
    expect(found.bow?.leastMm).toBeCloseTo(-0.15, 9);
  });

  it("cannot be told from one place, however often it was measured", () => {
    expect(splay([at(10, 80), at(10, 81)]).kind).toBe("too few places");
    expect(splay([]).kind).toBe("too few places");
  });

  it.each([[[at(Number.NaN, 80), at(1, 80)], 0] as const, [[at(0, 80), at(1, 80)], -1] as const])(
    "refuses what is no measure: %j",
    (readings, doubt) => {
      expect(() => splay([...readings], doubt)).toThrow(RangeError);
    },
  );

  it("of mirrored readings is mirrored, moves with nothing that both ends share, and its bounds hold the truth", () => {
    const mm = fc.double({ min: 40, max: 120, noNaN: true });
    const off = fc.double({ min: -0.05, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(mm, mm, off, off, fc.double({ min: -5, max: 5, noNaN: true }), (near, far, a, b, shift) => {
        const plain = measured([at(0, near), at(500, far)], 0.05);
        const mirrored = measured([at(0, -near), at(500, -far)], 0.05);
        expect(mirrored.leastMm).toBeCloseTo(-plain.mostMm, 8);
        const shifted = measured([at(0, near + shift), at(500, far + shift)], 0.05);
        expect(shifted.leastMm).toBeCloseTo(plain.leastMm, 8);
        const read = measured([at(0, near + a), at(500, far + b)], 0.05);
        expect(read.leastMm - 1e-8).toBeLessThanOrEqual(far - near);
        expect(read.mostMm + 1e-8).toBeGreaterThanOrEqual(far - near);
      }),
    );
  });
});

describe("splay in words", () => {
  it("says which way, by how much and how much a leg", () => {
    expect(said([at(0, 80), at(600, 80.5)])).toEqual([
      "The legs spread by 0.500 mm from 0.0 mm to 600.0 mm: 0.250 mm a leg, if both lean alike.",
    ]);
    expect(said([at(0, 80), at(600, 79.5)], 0.01)[0]).toBe(
      "The legs are pinched by 0.480 mm to 0.520 mm from 0.0 mm to 600.0 mm: 0.250 mm a leg, if both lean alike.",
    );
  });

  it("calls them parallel only where the whole of what may be is so, and never speaks of a twist as seen", () => {
    expect(said([at(0, 80), at(600, 80.02)], 0.02)[0]).toMatch(/^Parallel .*A twist does not show here/);
    expect(said([at(0, 80), at(600, 80.05)], 0.02)[0]).toMatch(/^Not decided: from 0.010 mm spread to 0.090/);
  });

  it("tells of a bow beside it", () => {
    expect(said([at(0, 80), at(300, 80.3), at(600, 80)])[1]).toContain("0.300 mm wider");
  });
});
