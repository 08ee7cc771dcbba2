import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leakAt, leakRate } from "../../../../lib/gauging/fits/leakRate";
import {
  flowUnits,
  pressureUnits,
  readAmount,
  timeUnits,
  volumeUnits,
} from "../../../../lib/gauging/lengths/readAmount";

const decay = { volumeMl: 1000, firstPa: 2000, secondPa: 1000, seconds: 60 };

describe("leakRate", () => {
  it("is the volume times the fall over the room's pressure and the time", () => {
    // By hand: 1000 ml x 1000 Pa / 101325 Pa in a minute.
    expect(leakRate(decay).mlPerMinute).toBeCloseTo(9.8692, 4);
  });

  it("of suction is that of the same pressure", () => {
    const sucked = leakRate({ ...decay, firstPa: -2000, secondPa: -1000 });
    expect(sucked.mlPerMinute).toBe(leakRate(decay).mlPerMinute);
    expect(sucked.atPa).toBe(-leakRate(decay).atPa);
    expect(leakAt(sucked)).toBe(leakAt(leakRate(decay)));
  });

  it("is none where the pressure holds", () => {
    expect(leakRate({ ...decay, secondPa: 2000 })).toEqual({ mlPerMinute: 0, atPa: 2000 });
  });

  it("comes out the same at one pressure whenever a leak in proportion is read", () => {
    const pa = fc.double({ min: 500, max: 6000, noNaN: true });
    const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(pa, share, share, (firstPa, one, other) => {
        // p falls by a constant share a second: ln p is straight.
        const fallenTo = (kept: number) =>
          leakRate({ volumeMl: 500, firstPa, secondPa: firstPa * kept, seconds: -100 * Math.log(kept) });
        expect(leakAt(fallenTo(one))).toBeCloseTo(leakAt(fallenTo(other)), 6);
        expect(leakAt(fallenTo(one))).toBeCloseTo((500 / 101_325) * 3000 * (60 / 100), 6);
      }),
    );
  });

  it.each([
    { volumeMl: 0 },
    { seconds: 0 },
    { secondPa: 2001 },
    { secondPa: -5 },
    { firstPa: 0, secondPa: 0 },
    { volumeMl: Number.NaN },
  ])("refuses %j", (wrong) => {
    expect(() => leakRate({ ...decay, ...wrong })).toThrow(RangeError);
  });

  it("a leak read at no pressure compares with none", () => {
    expect(() => leakAt({ mlPerMinute: 1, atPa: 0 })).toThrow(RangeError);
  });
});

describe("readAmount", () => {
  it.each([
    ["30 mbar", pressureUnits, 3000],
    ["3kPa", pressureUnits, 3000],
    ["-12 inH2O", pressureUnits, -2989.0668],
    ["30 cmH₂O", pressureUnits, 2941.995],
    ["1,2 l", volumeUnits, 1200],
    ["28 in³", volumeUnits, 458.837792],
    ["2 min", timeUnits, 120],
    ["0.4 l/min", flowUnits, 400],
  ] as const)("reads %s", (text, units, value) => {
    const read = readAmount(text, units);
    expect(read.kind === "amount" && read.value).toBeCloseTo(value, 4);
  });

  it.each(["30", "", "mbar", "30 furlongs", "1.2.3 kPa", "NaN kPa", "1e5 Pa"])("asks about '%s'", (text) => {
    expect(readAmount(text, pressureUnits).kind).toBe("unreadable");
  });
});
