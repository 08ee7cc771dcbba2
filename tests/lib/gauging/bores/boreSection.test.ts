import { describe, expect, it } from "vitest";
import { boreSection } from "../../../../lib/gauging/bores/boreSection";
import { boreWords } from "../../../../lib/gauging/bores/boreWords";
import { findDent } from "../../../../lib/gauging/bores/findDent";
import { ovality } from "../../../../lib/gauging/bores/ovality";
import { pressDirection } from "../../../../lib/gauging/bores/pressDirection";
import { tailOfT } from "../../../../lib/gauging/bores/tailOfT";
import { lengthWords } from "../../../../lib/gauging/lengths/lengthWords";
import { seededNoise } from "../noise";

const ovalAt = (amplitudeMm: number, widestDeg: number) => (angleDeg: number) => ({
  angleDeg,
  diameterMm: 17 + 2 * amplitudeMm * Math.cos((2 * (angleDeg - widestDeg) * Math.PI) / 180),
});
const nine = [0, 20, 40, 60, 80, 100, 120, 140, 160];
const dented = nine.map((deg) => {
  const reading = ovalAt(0.01, 30)(deg);
  return deg === 100 ? { ...reading, diameterMm: reading.diameterMm - 0.05 } : reading;
});

describe("tailOfT", () => {
  // Source: the usual table of Student's t.
  it.each([
    [12.7062047, 1, 0.05],
    [2.3533634, 3, 0.1],
    [2.5705818, 5, 0.05],
    [3.1692727, 10, 0.01],
  ])("a t of %f with %i degrees of freedom is passed with chance %f on both sides", (t, degrees, chance) => {
    expect(tailOfT(t, degrees)).toBeCloseTo(chance, 7);
    expect(tailOfT(-t, degrees)).toBeCloseTo(chance, 7);
  });
});

describe("findDent", () => {
  it("names the reading that no oval explains, and by how much", () => {
    const found = findDent(dented);
    expect(found).toMatchObject({ kind: "dent", index: 5, angleDeg: 100 });
    if (found.kind === "dent") expect(found.residualMm).toBeCloseTo(-0.05, 9);
  });

  it("calls a reading that is too large no dent", () => {
    const high = nine.map((deg) => {
      const reading = ovalAt(0.01, 30)(deg);
      return deg === 100 ? { ...reading, diameterMm: reading.diameterMm + 0.05 } : reading;
    });
    expect(findDent(high)).toMatchObject({ kind: "high", angleDeg: 100 });
  });

  it("names none in an oval of any size, nor within the rounding of the gauge", () => {
    expect(findDent(nine.map(ovalAt(0.2, 75)))).toEqual({ kind: "none" });
    const rounded = nine.map(ovalAt(0.01, 30)).map((reading) => ({
      ...reading,
      diameterMm: Math.round(reading.diameterMm / 0.00254) * 0.00254,
    }));
    expect(findDent(rounded)).toEqual({ kind: "none" });
  });

  it("does not answer from fewer than five angles, from which an oval explains anything", () => {
    expect(findDent([0, 45, 90, 135].map(ovalAt(0.01, 30))).kind).toBe("too few readings");
  });

  it("cries dent in one sound noisy bore of twenty and no oftener", () => {
    const noise = seededNoise(7);
    const bores = Array.from({ length: 3000 }, () =>
      findDent(
        [0, 30, 60, 90, 120, 150].map((deg) => {
          const reading = ovalAt(0.02, 40)(deg);
          return { ...reading, diameterMm: reading.diameterMm + 0.01 * noise() };
        }),
      ),
    );
    const share = bores.filter(({ kind }) => kind !== "none").length / bores.length;
    // The Bonferroni bound lies a little above the true chance; three standard errors of 3000 bores are .012.
    expect(share).toBeLessThan(0.062);
    expect(share).toBeGreaterThan(0.025);
  });
});

describe("pressDirection", () => {
  it("presses on both ends of the widest diameter", () => {
    const press = pressDirection(ovality([0, 30, 60, 90, 120, 150].map(ovalAt(0.01, 30))));
    if (press.kind !== "press") throw new Error(press.kind);
    expect(press.atDeg[0]).toBeCloseTo(30, 6);
    expect(press.atDeg[1]).toBeCloseTo(210, 6);
  });

  it("shortens the widest diameter: it is the largest of all that were measured", () => {
    const readings = [0, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165].map(ovalAt(0.01, 75));
    const press = pressDirection(ovality(readings));
    const [largest] = [...readings].sort((a, b) => b.diameterMm - a.diameterMm);
    expect(press.kind === "press" && press.atDeg[0]).toBeCloseTo(largest?.angleDeg ?? 0, 6);
  });

  it("says round of what is round, lets be what is under half a thou, and gives three readings no error", () => {
    expect(pressDirection(ovality([0, 60, 120].map(ovalAt(0, 0)))).kind).toBe("round");
    expect(pressDirection(ovality([0, 45, 90, 135].map(ovalAt(0.003, 30)))).kind).toBe("slight");
    expect(pressDirection(ovality([0, 60, 120].map(ovalAt(0.01, 30))))).toMatchObject({
      kind: "press",
      plusMinusDeg: null,
      chance: null,
    });
    expect(pressDirection(ovality([])).kind).toBe("too few readings");
  });

  it("would press one round noisy bore of twenty and no oftener", () => {
    const noise = seededNoise(11);
    const bores = Array.from({ length: 3000 }, () =>
      pressDirection(
        ovality([0, 30, 60, 90, 120, 150].map((angleDeg) => ({ angleDeg, diameterMm: 17 + 0.05 * noise() }))),
      ),
    );
    const share = bores.filter(({ kind }) => kind !== "not shown").length / bores.length;
    expect(Math.abs(share - 0.05)).toBeLessThan(0.012);
  });
});

describe("boreSection", () => {
  it("presses by the oval without the dented reading", () => {
    const { besideDent, press, oval } = boreSection(dented);
    if (besideDent.kind !== "fitted" || oval.kind !== "fitted") throw new Error("not fitted");
    expect(besideDent.amplitudeMm).toBeCloseTo(0.01, 9);
    expect(besideDent.widestDeg).toBeCloseTo(30, 6);
    expect(oval.amplitudeMm).not.toBeCloseTo(0.01, 3);
    expect(press.kind === "press" && press.atDeg[0]).toBeCloseTo(30, 6);
  });

  it("is said in words: where to press, the dent, and too few readings", () => {
    const words = boreWords(boreSection(dented), lengthWords("inch"));
    expect(words.press).toContain("30 and 210 degrees");
    expect(words.dent).toContain("At 100 degrees the bore is 2.0 thou smaller");
    expect(boreWords(boreSection([]), lengthWords("mm"))).toEqual({
      oval: "Too few readings: write diameters at three angles or more, such as 0, 60 and 120 degrees.",
    });
  });
});
