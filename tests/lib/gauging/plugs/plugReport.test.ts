import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leakRatio } from "../../../../lib/gauging/fits/leakRatio";
import { nameFit } from "../../../../lib/gauging/fits/nameFit";
import { lengthWords } from "../../../../lib/gauging/lengths/lengthWords";
import { plugReport } from "../../../../lib/gauging/plugs/plugReport";
import { plugWords } from "../../../../lib/gauging/plugs/plugWords";

const written = {
  passes: [".669 in"],
  stops: [".671 in"],
  reference: { passes: [".672 in"], stops: [".673 in"] },
  piston: { diameter: ".6675 in", plusMinus: ".0001 in" },
};
const names = { bore: "casing 2", reference: "casing 1" };

describe("plugReport", () => {
  it("reads bracket, reduction, clearance, fit and leak of one bore, and flags nothing that is settled", () => {
    const report = plugReport(written);
    expect(report.bore).toMatchObject({ lowMm: 16.9926, highMm: 17.0434 });
    expect(report.reduction).toMatchObject({ overMm: 0.0254, underMm: 0.1016, standing: "sure-reduced" });
    expect(report.clearance).toMatchObject({ leastMm: 0.03556, mostMm: 0.09144, standing: "sure-clearance" });
    expect(report.flags).toEqual([]);
  });

  it("flags in words what is missing, in dispute, in doubt or out of place", () => {
    const flags = (input: Parameters<typeof plugReport>[0]) => plugReport(input).flags.join("\n");
    expect(flags({ passes: [".672 in"], stops: [".670 in"] })).toContain(
      "contradiction: .6720 in passed where .6700 in stopped",
    );
    expect(flags({ passes: [".669 in"], stops: [] })).toContain("no reference");
    expect(flags({ ...written, reference: { passes: [], stops: [] } })).toContain("no reference");
    expect(flags({ passes: [], stops: [] })).toContain("too few readings");
    expect(flags({ ...written, passes: ["16.88 in"] })).toContain("implausible unit: '16.88 in'");
    expect(flags({ ...written, passes: [".6725 in"], stops: [".674 in"] })).toContain(
      "undecided: the brackets overlap",
    );
    expect(flags({ ...written, piston: { diameter: ".670 in" } })).toContain("undecided: the piston's size");
    expect(flags({ ...written, reference: { ...written.reference, stops: [] } })).toContain(
      "open: needs the smallest plug that stops in the reference bore",
    );
    expect(
      flags({ ...written, depth: "1 in", reference: { ...written.reference, depth: "2 in" } }),
    ).toContain("different depths");
    expect(flags({ ...written, reference: { passes: [".674 in"], stops: [".672 in"] } })).toContain(
      "contradiction: in the reference",
    );
  });

  it("tells a give or take that was written, and none where none was", () => {
    const told = (plusMinus?: string) =>
      plugReport({ ...written, piston: { diameter: ".6675 in", plusMinus } }).piston?.plusMinusMm;
    expect(told(".0001 in")).toBeCloseTo(0.00254, 9);
    expect(told("0 in")).toBe(0);
    expect(told()).toBeNull();
  });

  it("claims no clearance from a piston whose error cannot be read", () => {
    const report = plugReport({ ...written, piston: { diameter: ".6675 in", plusMinus: "1" } });
    expect(report.clearance).toBeNull();
    expect(report.flags.join()).toContain("give or take");
  });

  it("holds the true bore, reduction and clearance, whatever plugs were tried", () => {
    const tenths = fc.integer({ min: 6600, max: 6900 });
    fc.assert(
      fc.property(
        fc.double({ min: 16.8, max: 17.5, noNaN: true }),
        fc.double({ min: 16.8, max: 17.5, noNaN: true }),
        fc.array(tenths, { minLength: 1, maxLength: 8 }),
        fc.array(tenths, { minLength: 1, maxLength: 8 }),
        (boreMm, siblingMm, plugs, siblingPlugs) => {
          const write = (tenth: number) => `.${tenth} in`;
          const tried = (mm: number, sizes: readonly number[]) => ({
            passes: sizes.filter((tenth) => tenth * 0.00254 <= mm).map(write),
            stops: sizes.filter((tenth) => tenth * 0.00254 > mm).map(write),
          });
          const report = plugReport({
            ...tried(boreMm, plugs),
            reference: tried(siblingMm, siblingPlugs),
            piston: { diameter: "16.9 mm", plusMinus: "0.01 mm" },
          });
          const holds = (low: number | null, value: number, high: number | null) =>
            (low === null || low <= value + 1e-9) && (high === null || value <= high + 1e-9);
          expect(holds(report.bore.lowMm, boreMm, report.bore.highMm)).toBe(true);
          expect(
            holds(report.reduction?.overMm ?? null, siblingMm - boreMm, report.reduction?.underMm ?? null),
          ).toBe(true);
          for (const pistonMm of [16.89, 16.9, 16.91])
            expect(
              holds(report.clearance?.leastMm ?? null, boreMm - pistonMm, report.clearance?.mostMm ?? null),
            ).toBe(true);
        },
      ),
    );
  });
});

describe("plugWords", () => {
  it("say what is bounded, and what nothing bounds", () => {
    const words = plugWords(plugReport(written), names, lengthWords("inch"));
    expect(words.size).toBe("Casing 2: at least .6690 in and under .6710 in.");
    expect(words.reduction).toBe(
      "Casing 2 is tighter than casing 1 by more than 1.0 thou and less than 4.0 thou.",
    );
    expect(words.clearance).toContain("by at least 1.4 thou and under 3.6 thou");
    const open = plugReport({
      passes: [".6820"],
      stops: [".6840"],
      reference: { passes: [".6850"], stops: [] },
    });
    expect(plugWords(open, names, lengthWords("inch")).reduction).toContain("nothing says by how much more");
    expect(plugWords(plugReport({ passes: [], stops: [".7"] }), names, lengthWords("mm")).size).toContain(
      "nothing bounds it below",
    );
  });

  it("say of interference by how much at least and at most", () => {
    const tight = plugReport({ ...written, piston: { diameter: ".672 in", plusMinus: ".0001 in" } });
    expect(tight.clearance?.standing).toBe("sure-interference");
    expect(plugWords(tight, names, lengthWords("inch")).clearance).toContain(
      "by more than 0.9 thou and at most 3.1 thou",
    );
  });
});

const sure = (leastMm: number, mostMm: number) => ({ leastMm, mostMm, standing: "sure-clearance" as const });

describe("nameFit", () => {
  it("names the narrowest class that holds the whole interval first", () => {
    expect(nameFit(sure(0.007, 0.024), 17)).toEqual({ kind: "within", names: ["H6/g5", "H7/h6", "H7/g6"] });
    expect(nameFit(sure(0.036, 0.05), 17)).toEqual({ kind: "within", names: ["H7/f7"] });
  });

  it("says which it could be where the interval sticks out, and none where all are passed", () => {
    expect(nameFit(sure(0.03, 0.09), 17)).toEqual({ kind: "could be", names: ["H7/g6", "H7/f7"] });
    expect(nameFit(sure(0.06, 0.09), 17)).toMatchObject({ kind: "none" });
    expect(nameFit({ leastMm: -0.03, mostMm: -0.01, standing: "sure-interference" }, 17).kind).toBe("none");
  });

  it("names none outside the sizes of its table", () => {
    expect(nameFit(sure(0.007, 0.024), 90)).toMatchObject({
      kind: "none",
      why: expect.stringContaining("80 mm"),
    });
  });
});

describe("leakRatio", () => {
  it("goes as the cube: twice the clearance of a good valve leaks eight times as much", () => {
    expect(leakRatio(sure(0.0762, 0.1143))).toMatchObject({ least: 8, most: 27 });
  });

  it("leaks nothing at line to line, is open where the clearance is, and is none under sure interference", () => {
    expect(leakRatio({ leastMm: -0.01, mostMm: null, standing: "undecided" })).toMatchObject({
      least: 0,
      most: null,
    });
    expect(leakRatio({ leastMm: -0.02, mostMm: -0.01, standing: "sure-interference" })).toBeUndefined();
    expect(() => leakRatio(sure(0.01, 0.02), 0)).toThrow("must be above 0");
  });
});
