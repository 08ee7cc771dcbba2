import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearance } from "../../../lib/gauging/fits/clearance";
import { plugBracket } from "../../../lib/gauging/plugs/plugBracket";
import { reduction } from "../../../lib/gauging/plugs/reduction";

/** A set of plugs with gaps, and a bore somewhere among, under or over them. */
const plugsMm = fc.uniqueArray(
  fc.integer({ min: 6600, max: 6900 }).map((tenths) => tenths * 0.00254),
  {
    minLength: 0,
    maxLength: 12,
  },
);
const sizeMm = fc.double({ min: 16.7, max: 17.6, noNaN: true });

/** What an honest technician writes down: a plug passes when it is no larger than the bore. */
function gauge(boreMm: number, plugs: readonly number[]) {
  return plugBracket({
    passesMm: plugs.filter((mm) => mm <= boreMm),
    stopsMm: plugs.filter((mm) => mm > boreMm),
  });
}

const contains = (lowMm: number | null, mm: number, highMm: number | null) =>
  (lowMm === null || lowMm <= mm) && (highMm === null || mm < highMm);
/** Rounding to 1e-9 mm may move an end by half of that. */
const grainMm = 1e-9;

describe("plugBracket", () => {
  it("lies between the largest that passes and the smallest that stops", () => {
    expect(plugBracket({ passesMm: [16.9, 17, 16.8], stopsMm: [17.2, 17.1] })).toEqual({
      lowMm: 17,
      highMm: 17.1,
      contradictions: [],
    });
  });

  it("is open where no plug bounds it", () => {
    expect(plugBracket({ passesMm: [17], stopsMm: [] })).toMatchObject({ lowMm: 17, highMm: null });
    expect(plugBracket({ passesMm: [], stopsMm: [17] })).toMatchObject({ lowMm: null, highMm: 17 });
    expect(plugBracket({ passesMm: [], stopsMm: [] })).toMatchObject({ lowMm: null, highMm: null });
  });

  it("names a larger plug that passed where a smaller one stopped, and lets neither bound the bore", () => {
    expect(plugBracket({ passesMm: [16.9, 17.1], stopsMm: [17, 17.2] })).toEqual({
      lowMm: 16.9,
      highMm: 17.2,
      contradictions: [{ passedMm: 17.1, stoppedMm: 17 }],
    });
  });

  it("counts the same plug passing and stopping as a contradiction", () => {
    expect(plugBracket({ passesMm: [17], stopsMm: [17] })).toEqual({
      lowMm: null,
      highMm: null,
      contradictions: [{ passedMm: 17, stoppedMm: 17 }],
    });
  });

  it("refuses a plug of no size", () => {
    expect(() => plugBracket({ passesMm: [0], stopsMm: [] })).toThrow(
      "a plug's diameter must be a number above 0; got 0",
    );
  });

  it("holds the true bore, and finds no contradiction, whatever plugs were tried", () => {
    fc.assert(
      fc.property(sizeMm, plugsMm, (boreMm, plugs) => {
        const bracket = gauge(boreMm, plugs);
        expect(bracket.contradictions).toEqual([]);
        expect(contains(bracket.lowMm, boreMm, bracket.highMm)).toBe(true);
      }),
    );
  });

  it("holds the true bore when one plug was misread and that shows as a contradiction", () => {
    fc.assert(
      fc.property(sizeMm, plugsMm, fc.nat(), (boreMm, plugs, at) => {
        const misread = plugs[at % Math.max(1, plugs.length)];
        fc.pre(misread !== undefined);
        const passed = (mm: number) => (mm === misread ? mm > boreMm : mm <= boreMm);
        const bracket = plugBracket({
          passesMm: plugs.filter(passed),
          stopsMm: plugs.filter((mm) => !passed(mm)),
        });
        fc.pre(bracket.contradictions.length > 0);
        expect(contains(bracket.lowMm, boreMm, bracket.highMm)).toBe(true);
      }),
    );
  });
});

describe("reduction", () => {
  it("is sure when the plug that stops is no larger than one that passes the reference", () => {
    const found = reduction({ lowMm: 17, highMm: 17.05 }, { lowMm: 17.05, highMm: 17.1 });
    expect(found).toEqual({
      overMm: 0,
      underMm: 0.1,
      standing: "sure-reduced",
      overFrom: { referenceLowMm: 17.05, highMm: 17.05 },
      underFrom: { referenceHighMm: 17.1, lowMm: 17 },
      missing: [],
    });
  });

  it("is undecided while the brackets overlap, and between equal stated sizes", () => {
    expect(reduction({ lowMm: 17, highMm: 17.1 }, { lowMm: 17.05, highMm: 17.15 }).standing).toBe(
      "undecided",
    );
    expect(reduction({ lowMm: 17, highMm: 17 }, { lowMm: 17, highMm: 17 }).standing).toBe("undecided");
  });

  it("says that the bore is surely the larger one when it is", () => {
    expect(reduction({ lowMm: 17.1, highMm: null }, { lowMm: 17, highMm: 17.1 }).standing).toBe(
      "sure-larger",
    );
  });

  it("says for each open end which plug would bound it", () => {
    expect(reduction({ lowMm: null, highMm: null }, { lowMm: 17, highMm: null })).toMatchObject({
      overMm: null,
      underMm: null,
      standing: "undecided",
      missing: [
        "the smallest plug that stops in this bore",
        "the smallest plug that stops in the reference bore",
        "the largest plug that passes this bore",
      ],
    });
  });

  it("refuses a bracket that is the wrong way round", () => {
    expect(() => reduction({ lowMm: 18, highMm: 17 }, { lowMm: null, highMm: null })).toThrow(
      "got 18 to 17 mm",
    );
  });

  it("holds the true reduction, and its standing is never contradicted by it", () => {
    fc.assert(
      fc.property(sizeMm, sizeMm, plugsMm, plugsMm, (boreMm, referenceMm, plugs, referencePlugs) => {
        const found = reduction(gauge(boreMm, plugs), gauge(referenceMm, referencePlugs));
        const trueMm = referenceMm - boreMm;
        if (found.overMm !== null) expect(trueMm).toBeGreaterThan(found.overMm - grainMm);
        if (found.underMm !== null) expect(trueMm).toBeLessThan(found.underMm + grainMm);
        if (found.standing === "sure-reduced") expect(trueMm).toBeGreaterThan(-grainMm);
        if (found.standing === "sure-larger") expect(trueMm).toBeLessThan(grainMm);
      }),
    );
  });
});

describe("clearance", () => {
  it("widens by what the micrometer may be out", () => {
    expect(clearance({ lowMm: 17, highMm: 17.05 }, { diameterMm: 16.95, plusMinusMm: 0.01 })).toEqual({
      leastMm: 0.04,
      mostMm: 0.11,
      standing: "sure-clearance",
    });
  });

  it("is interference when even the largest bore is no larger than the smallest piston", () => {
    expect(clearance({ lowMm: null, highMm: 16.9 }, { diameterMm: 16.9 })).toEqual({
      leastMm: null,
      mostMm: 0,
      standing: "sure-interference",
    });
  });

  it("is undecided when the bracket takes in the piston's size", () => {
    expect(clearance({ lowMm: 16.9, highMm: 17 }, { diameterMm: 16.95 }).standing).toBe("undecided");
    expect(clearance({ lowMm: 16.9495, highMm: 17 }, { diameterMm: 16.95 }).standing).toBe("undecided");
    expect(clearance({ lowMm: 16.95, highMm: 17 }, { diameterMm: 16.95 }).standing).toBe("undecided");
    expect(clearance({ lowMm: null, highMm: null }, { diameterMm: 16.95 }).standing).toBe("undecided");
  });

  it("refuses a piston without a size", () => {
    expect(() => clearance({ lowMm: 17, highMm: null }, { diameterMm: Number.NaN })).toThrow(
      "got NaN and 0 mm",
    );
  });

  it("holds the true clearance, and its sign is never contradicted by it", () => {
    const outMm = fc.double({ min: 0, max: 0.01, noNaN: true });
    const shareOut = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(sizeMm, sizeMm, plugsMm, outMm, shareOut, (boreMm, pistonMm, plugs, plusMinusMm, share) => {
        const diameterMm = pistonMm + share * plusMinusMm;
        const found = clearance(gauge(boreMm, plugs), { diameterMm, plusMinusMm });
        const trueMm = boreMm - pistonMm;
        if (found.leastMm !== null) expect(trueMm).toBeGreaterThan(found.leastMm - grainMm);
        if (found.mostMm !== null) expect(trueMm).toBeLessThan(found.mostMm + grainMm);
        if (found.standing === "sure-clearance") expect(trueMm).toBeGreaterThan(-grainMm);
        if (found.standing === "sure-interference") expect(trueMm).toBeLessThan(grainMm);
      }),
    );
  });
});
