import { describe, expect, it } from "vitest";
import { clearance } from "../../lib/gauging/fits/clearance";
import { formatLength } from "../../lib/gauging/lengths/formatLength";
import { readLength } from "../../lib/gauging/lengths/readLength";
import { plugBracket } from "../../lib/gauging/plugs/plugBracket";
import { reduction } from "../../lib/gauging/plugs/reduction";

function mmOf(text: string): number {
  const read = readLength(text, { expects: "inch" });
  if (read.kind !== "length") throw new Error(`${read.kind}: ${text}`);
  return read.mm;
}
const bracketOf = (passes: readonly string[], stops: readonly string[]) =>
  plugBracket({ passesMm: passes.map(mmOf), stopsMm: stops.map(mmOf) });

/** Interval arithmetic by hand; that a plug's number is its diameter in thousandths of an inch is common practice. */
describe("plugs", () => {
  it.each([
    [".0005", 0.0127],
    [".001", 0.0254],
    [".0015", 0.0381],
    [".002", 0.0508],
    [".003", 0.0762],
  ])("%s in is %f mm exactly", (text, mm) => {
    expect(mmOf(text)).toBe(mm);
  });

  const reduced = bracketOf([".6820"], [".6840"]);

  it("a casing that took .6850 and now passes .6820 but stops .6840 is reduced by more than .0010, by how much more is unknown", () => {
    const found = reduction(reduced, bracketOf([".6850"], []));
    expect(found).toEqual({
      overMm: 0.0254,
      underMm: null,
      standing: "sure-reduced",
      overFrom: { referenceLowMm: mmOf(".6850"), highMm: mmOf(".6840") },
      underFrom: null,
      missing: ["the smallest plug that stops in the reference bore"],
    });
    expect(formatLength(found.overMm ?? 0, "thou")).toBe("1.0 thou");
  });

  it("and by less than .0040 if a .6860 never passed the sound bore", () => {
    const found = reduction(reduced, bracketOf([".6850"], [".6860"]));
    expect(found.overMm).toBe(0.0254);
    expect(found.underMm).toBe(0.1016);
    expect(found.missing).toEqual([]);
  });

  it("a bore that passes .669 and stops .671 clears a piston of .6675 +/- .0001 by 1.4 to under 3.6 thou", () => {
    const found = clearance(bracketOf([".669"], [".671"]), {
      diameterMm: mmOf(".6675"),
      plusMinusMm: mmOf(".0001"),
    });
    expect(found.standing).toBe("sure-clearance");
    expect(found.leastMm).toBe(0.03556);
    expect(found.mostMm).toBe(0.09144);
  });
});
