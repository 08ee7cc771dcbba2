import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength } from "../../../../lib/gauging/lengths/formatLength";
import type { LengthUnit } from "../../../../lib/gauging/lengths/lengthUnit";
import { readLength } from "../../../../lib/gauging/lengths/readLength";

const length = (mm: number) => ({ kind: "length", mm });

describe("readLength", () => {
  it.each([
    [".6645", 16.8783],
    ["0.6645 in", 16.8783],
    [".6645in.", 16.8783],
    ['.6645"', 16.8783],
    ["664.5 thou", 16.8783],
    ["664.5thou", 16.8783],
    ["16.88 mm", 16.88],
    ["16,88 mm", 16.88],
    [" 16.88 MM ", 16.88],
    ["1/4 in", 6.35],
    ['1 1/4"', 31.75],
    ["1-1/4 inches", 31.75],
    ['1¼"', 31.75],
    ["½ in", 12.7],
    ["1/4", 6.35],
    [".669", 16.9926],
    ["0.669", 16.9926],
    ["1.688 cm", 16.88],
    ["5 µm", 0.005],
    ["2 mm", 2],
    ["2. mm", 2],
    ["0", 0],
  ])("reads %s without a field's help as %f mm", (text, mm) => {
    expect(readLength(text)).toEqual(length(mm));
  });

  it.each<[string, LengthUnit, number]>([
    ["664.5", "thou", 16.8783],
    ["2", "thou", 0.0508],
    ["16.88", "mm", 16.88],
    ["16,88", "mm", 16.88],
    ["1.2", "inch", 30.48],
    [".6645", "inch", 16.8783],
    ["1 1/4", "inch", 31.75],
  ])("takes the bare %s in a field for %s at the field's word", (text, expects, mm) => {
    expect(readLength(text, { expects })).toEqual(length(mm));
  });

  it.each<[string, LengthUnit | undefined]>([
    ["16.88", "inch"],
    ["664.5", "inch"],
    ["16.88", undefined],
    ["664.5", undefined],
    ["669", undefined],
    ["0,669", undefined],
    [".669", "mm"],
    ["664.5", "mm"],
    ["1/4", "mm"],
    ["16.88", "thou"],
    [".669", "thou"],
    ["16878", "thou"],
  ])("asks about the bare %s in a field for %s and never guesses", (text, expects) => {
    expect(readLength(text, { expects }).kind).toBe("question");
  });

  it("offers what a doubtful number could be, leaving out what is longer than a metre", () => {
    expect(readLength("664.5", { expects: "inch" })).toEqual({
      kind: "question",
      got: "664.5",
      why: "inches were expected, and 664.5 is too long for a bore in inches",
      could: [
        { mm: 664.5, unit: "mm", write: "664.5 mm" },
        { mm: 16.8783, unit: "thou", write: "664.5 thou" },
      ],
    });
  });

  it("asks about a mil, a thou to some and a millimetre to others", () => {
    expect(readLength("5 mil")).toMatchObject({
      kind: "question",
      could: [{ mm: 0.127 }, { mm: 5 }],
    });
  });

  it("asks whether a comma before three digits parts thousands, where both could be meant", () => {
    expect(readLength("1,250 thou")).toMatchObject({
      kind: "question",
      could: [
        { mm: 31.75, write: "1250 thou" },
        { mm: 0.03175, write: "1.25 thou" },
      ],
    });
    expect(readLength("16,885 mm")).toEqual(length(16.885));
  });

  it.each([
    "",
    "   ",
    "halfway",
    "in",
    ".",
    "-.001 in",
    "1/0 in",
    "1.2.3 mm",
    "5 furlongs",
    "1,234.5 thou",
    "NaN",
  ])("says what to write instead of %j", (got) => {
    expect(readLength(got)).toMatchObject({
      kind: "unreadable",
      got,
      write: expect.stringContaining(".6645 in"),
    });
  });

  it("an offered reading, written as told, is read as that length", () => {
    const amounts = fc.double({ min: 0.01, max: 5000, noNaN: true }).map((amount) => amount.toFixed(3));
    const fields = fc.constantFrom<LengthUnit | undefined>("inch", "thou", "mm", undefined);
    fc.assert(
      fc.property(amounts, fields, (text, expects) => {
        const read = readLength(text, { expects });
        if (read.kind === "question")
          for (const { mm, write } of read.could) expect(readLength(write)).toEqual(length(mm));
        else expect(read.kind).toBe("length");
      }),
    );
  });

  it("the same length in inches, thou and millimetres is the same number", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40_000 }), (tenths) => {
        const thou = (tenths / 10).toFixed(1);
        const expected = length(Math.round(tenths * 2540) / 1e6);
        expect(readLength(`${thou} thou`)).toEqual(expected);
        expect(readLength(`${(tenths / 10_000).toFixed(4)} in`)).toEqual(expected);
        expect(readLength(`${(tenths * 0.00254).toFixed(6)} mm`)).toEqual(expected);
      }),
    );
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readLength(text);
        if (read.kind === "length") expect(read.mm).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe("formatLength", () => {
  it("shows a tenth of a thou or a thousandth of a millimetre", () => {
    expect(formatLength(16.8783, "thou")).toBe("664.5 thou");
    expect(formatLength(16.8783, "mm")).toBe("16.878 mm");
    expect(formatLength(0.0254, "thou")).toBe("1.0 thou");
    expect(formatLength(-0.0254, "thou")).toBe("-1.0 thou");
  });

  it("shows no sign on what rounds to nothing", () => {
    expect(formatLength(-0.0001, "thou")).toBe("0.0 thou");
  });

  it("refuses an end that nothing bounds", () => {
    expect(() => formatLength(Number.POSITIVE_INFINITY, "mm")).toThrow(
      "a length must be finite; got Infinity",
    );
  });

  it("is read back to within half of its last digit", () => {
    const halfDigitMm = { thou: 0.00127, mm: 0.0005 };
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.constantFrom("thou" as const, "mm" as const),
        (mm, unit) => {
          const read = readLength(formatLength(mm, unit));
          if (read.kind !== "length") throw new Error(`not read back: ${formatLength(mm, unit)}`);
          expect(Math.abs(read.mm - mm)).toBeLessThanOrEqual(halfDigitMm[unit] + 1e-9);
        },
      ),
    );
  });
});
