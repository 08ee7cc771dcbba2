import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entropyBits } from "@/lib/diagnosis/entropy";
import { informationGainBits } from "@/lib/diagnosis/informationGain";
import { weighCauses } from "@/lib/diagnosis/posterior";
import { smallKinds, smallModel } from "./smallModel";

describe("entropyBits", () => {
  it("is 1 bit for a fair coin, log2 n for n alike, 0 for what is certain or not there", () => {
    expect(entropyBits([0.5, 0.5])).toBe(1);
    expect(entropyBits([1, 1, 1, 1, 1, 1, 1, 1])).toBeCloseTo(3, 12);
    expect(entropyBits([1, 0])).toBe(0);
    expect(entropyBits([])).toBe(0);
    expect(entropyBits([0, 0])).toBe(0);
  });

  it("is 0 to log2 n, and does not change with scale or order", () => {
    const weights = fc.array(fc.double({ min: 1e-6, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(weights, fc.double({ min: 0.01, max: 100, noNaN: true }), (values, scale) => {
        const bits = entropyBits(values);
        expect(bits).toBeGreaterThanOrEqual(0);
        expect(bits).toBeLessThanOrEqual(Math.log2(values.length) + 1e-9);
        expect(entropyBits(values.map((value) => value * scale))).toBeCloseTo(bits, 9);
        expect(entropyBits(values.toReversed())).toBeCloseTo(bits, 9);
      }),
    );
  });
});

describe("informationGainBits", () => {
  const model = smallModel();
  /** The mutual information of cause and outcome, summed cell by cell. */
  const direct = (belief: readonly number[], key: string) => {
    const outcomes = model.kindOf(key)?.outcomes ?? [];
    const table = outcomes.map((outcome) => {
      const likelihoods = model.likelihoods(key, outcome);
      return belief.map((p, row) => p * (likelihoods?.[row] ?? 1 / outcomes.length));
    });
    let bits = 0;
    for (const cells of table) {
      const total = cells.reduce((sum, cell) => sum + cell, 0);
      for (const [row, cell] of cells.entries())
        if (cell > 0) bits += cell * Math.log2(cell / (total * (belief[row] ?? 0)));
    }
    return bits;
  };
  const beliefs = fc
    .tuple(...smallKinds.map(() => fc.option(fc.nat(1))), fc.double({ min: 0.001, max: 0.9, noNaN: true }))
    .map(([first, second, third, nonePrior]) => {
      const found = [first, second, third].flatMap((at, kind) => {
        const outcome = at === null || at === undefined ? undefined : smallKinds[kind]?.outcomes[at];
        const key = smallKinds[kind]?.key;
        return outcome === undefined || key === undefined ? [] : [[key, outcome] as const];
      });
      return weighCauses(model, new Map(found), { nonePrior: nonePrior ?? 0.1 });
    });

  it("is the mutual information of cause and outcome", () => {
    fc.assert(
      fc.property(beliefs, fc.constantFrom(...smallKinds.map(({ key }) => key)), (belief, key) => {
        const now = [...belief.causes, belief.noneFits];
        expect(informationGainBits(model, belief, key)).toBeCloseTo(direct(now, key), 9);
      }),
    );
  });

  it("is between 0 and the entropy of the belief", () => {
    fc.assert(
      fc.property(beliefs, fc.constantFrom(...smallKinds.map(({ key }) => key)), (belief, key) => {
        const gain = informationGainBits(model, belief, key);
        expect(gain).toBeGreaterThanOrEqual(0);
        expect(gain).toBeLessThanOrEqual(entropyBits([...belief.causes, belief.noneFits]) + 1e-9);
      }),
    );
  });

  it("is 0 for what tells nothing apart, for what is not known, and when all is certain", () => {
    const belief = weighCauses(model, new Map());
    expect(informationGainBits(model, belief, "colour")).toBeCloseTo(0, 12);
    expect(informationGainBits(model, belief, "unheard-of")).toBe(0);
    expect(
      informationGainBits(model, { causes: Float64Array.of(0, 1, 0), noneFits: 0 }, "travel"),
    ).toBeCloseTo(0, 12);
  });
});
