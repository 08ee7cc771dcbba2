import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CauseModel } from "@/lib/diagnosis/causeModel";
import { normaliseLogs, type Posterior, weighCauses } from "@/lib/diagnosis/posterior";
import { smallKinds, smallModel } from "./smallModel";

const model = smallModel();
const sum = ({ causes, noneFits }: Posterior) => causes.reduce((total, p) => total + p, noneFits);
const findingsOf = fc
  .tuple(
    ...smallKinds.map(({ key, outcomes }) =>
      fc.option(fc.constantFrom(...outcomes)).map((o) => [key, o] as const),
    ),
  )
  .map((pairs) => pairs.flatMap(([key, outcome]) => (outcome === null ? [] : [[key, outcome] as const])));

describe("weighCauses", () => {
  it("adds up to 1 with none of them, every part in 0..1", () => {
    const nonePrior = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(findingsOf, nonePrior, fc.subarray(["travel", "casing"]), (findings, prior, doubtful) => {
        const belief = weighCauses(model, new Map(findings), {
          nonePrior: prior,
          doubtful: new Set(doubtful),
        });
        expect(sum(belief)).toBeCloseTo(1, 12);
        for (const p of [...belief.causes, belief.noneFits]) {
          expect(p).toBeGreaterThanOrEqual(0);
          expect(p).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it("does not care in which order the findings came", () => {
    fc.assert(
      fc.property(findingsOf, (findings) => {
        const one = weighCauses(model, new Map(findings));
        const other = weighCauses(model, new Map(findings.toReversed()));
        for (const [row, p] of one.causes.entries()) expect(p).toBeCloseTo(other.causes[row] ?? 0, 12);
      }),
    );
  });

  it("starts from how common the causes are: 6, 3 and 1 jobs of ten", () => {
    const { causes, noneFits } = weighCauses(model, new Map(), { nonePrior: 0.1 });
    expect([...causes, noneFits].map((p) => Number(p.toFixed(12)))).toEqual([0.54, 0.27, 0.09, 0.1]);
  });

  it("multiplies the odds of two causes by the ratio of their likelihoods", () => {
    const before = weighCauses(model, new Map()).causes;
    const after = weighCauses(model, new Map([["travel", "hangs"]])).causes;
    const [dirt = 0, dent = 0] = model.likelihoods("travel", "hangs") ?? [];
    const odds = ([a = 0, b = 0]: Float64Array) => b / a;
    expect(odds(after) / odds(before)).toBeCloseTo(dent / dirt, 10);
  });

  it("lets a finding change nothing that is as likely under every cause as under none", () => {
    const before = weighCauses(model, new Map([["travel", "hangs"]]));
    const after = weighCauses(
      model,
      new Map([
        ["travel", "hangs"],
        ["colour", "red"],
      ]),
    );
    for (const [row, p] of before.causes.entries()) expect(after.causes[row]).toBeCloseTo(p, 12);
    expect(after.noneFits).toBeCloseTo(before.noneFits, 12);
  });

  it("lets what the model does not know change nothing", () => {
    const before = weighCauses(model, new Map());
    expect(
      weighCauses(
        model,
        new Map([
          ["unheard-of", "hangs"],
          ["travel", "unheard-of"],
        ]),
      ),
    ).toEqual(before);
  });

  it("gives a doubted finding less weight, but not none", () => {
    const dent = (doubtful: ReadonlySet<string>) =>
      weighCauses(model, new Map([["travel", "hangs"]]), { doubtful }).causes[1] ?? 0;
    const prior = weighCauses(model, new Map()).causes[1] ?? 1;
    expect(dent(new Set(["travel"]))).toBeGreaterThan(prior);
    expect(dent(new Set(["travel"]))).toBeLessThan(dent(new Set()));
  });

  it("gives an impossible cause 0, and lets none fit when no cause is possible", () => {
    const { causes } = weighCauses(model, new Map([["travel", "drags"]]), {
      possible: (id) => id !== "dirt",
    });
    expect(causes[0]).toBe(0);
    expect(causes[1]).toBeGreaterThan(0);
    const nothing = weighCauses(model, new Map([["travel", "drags"]]), { possible: () => false });
    expect(nothing).toEqual({ causes: new Float64Array(3), noneFits: 1 });
    expect(weighCauses(new CauseModel([], []), new Map())).toEqual({
      causes: new Float64Array(0),
      noneFits: 1,
    });
  });
});

describe("normaliseLogs", () => {
  it("is the exponentials, scaled to 1", () => {
    const { causes, noneFits } = normaliseLogs(Float64Array.of(Math.log(1), Math.log(3)), Math.log(4));
    expect([...causes, noneFits].map((p) => Number(p.toFixed(12)))).toEqual([0.125, 0.375, 0.5]);
  });

  it("does not run out of range", () => {
    const { causes, noneFits } = normaliseLogs(Float64Array.of(-100_000, -100_000 + Math.log(3)), -200_000);
    expect(causes[0]).toBeCloseTo(0.25, 9);
    expect(causes[1]).toBeCloseTo(0.75, 9);
    expect(noneFits).toBe(0);
  });

  it("lets none fit when nothing is possible", () => {
    expect(normaliseLogs(Float64Array.of(Number.NEGATIVE_INFINITY), Number.NEGATIVE_INFINITY).noneFits).toBe(
      1,
    );
  });
});
