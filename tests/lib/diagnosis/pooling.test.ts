import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { poolOpinions } from "@/lib/diagnosis/poolOpinions";
import type { Posterior } from "@/lib/diagnosis/posterior";
import { voteOfCases } from "@/lib/diagnosis/voteOfCases";

const causes = ["a", "b", "c"];
const prior = Float64Array.of(0.5, 0.3, 0.2);
const vote = (similarity: number, id: string, share = 1) => ({ similarity, causes: [{ id, share }] });
const total = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0);

describe("voteOfCases", () => {
  it("is the prior where nobody votes", () => {
    for (const [row, p] of voteOfCases(causes, prior, []).entries())
      expect(p).toBeCloseTo(prior[row] ?? 0, 12);
  });

  it("adds up to what the prior adds up to, whoever votes", () => {
    const votes = fc.array(
      fc
        .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom("a", "b", "c", "unheard-of"))
        .map(([similarity, id]) => vote(similarity, id)),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(votes, fc.constantFrom(1, 0.96), (cast, mass) => {
        const start = prior.map((p) => p * mass);
        expect(total(voteOfCases(causes, start, cast))).toBeCloseTo(mass, 12);
      }),
    );
  });

  it("raises the cause that is voted for and lowers the others", () => {
    const [a = 0, b = 0, c = 0] = voteOfCases(causes, prior, [vote(0.9, "c")]);
    expect(c).toBeGreaterThan(0.2);
    expect(a).toBeLessThan(0.5);
    expect(a / b).toBeCloseTo(0.5 / 0.3, 12);
  });

  it("hears a case the more, the more alike it is", () => {
    const between = voteOfCases(causes, Float64Array.of(1, 1, 1), [vote(0.9, "a"), vote(0.7, "b")]);
    expect(between[0]).toBeGreaterThan(between[1] ?? 1);
    expect(between[1]).toBeGreaterThan(between[2] ?? 1);
  });

  it("counts by how far a case stands behind the best one, not by where the best one stands", () => {
    const high = voteOfCases(causes, prior, [vote(0.9, "a"), vote(0.8, "b")]);
    const low = voteOfCases(causes, prior, [vote(0.5, "a"), vote(0.4, "b")]);
    for (const [row, p] of high.entries()) expect(p).toBeCloseTo(low[row] ?? 0, 12);
  });

  it("divides a case's say among its causes", () => {
    const shared = {
      similarity: 0.9,
      causes: [
        { id: "a", share: 0.5 },
        { id: "b", share: 0.5 },
      ],
    };
    const values = voteOfCases(causes, Float64Array.of(1, 1, 1), [shared]);
    expect(values[0]).toBeCloseTo(values[1] ?? 0, 12);
    expect(values[0]).toBeGreaterThan(values[2] ?? 1);
  });

  it("gives an impossible or unknown cause nothing", () => {
    const values = voteOfCases(causes, Float64Array.of(0.5, 0.5, 0), [
      vote(0.9, "c"),
      vote(0.9, "unheard-of"),
    ]);
    expect([...values]).toEqual([0.5, 0.5, 0]);
    expect([...voteOfCases(causes, new Float64Array(3), [vote(0.9, "a")])]).toEqual([0, 0, 0]);
  });
});

describe("poolOpinions", () => {
  const share = fc.double({ min: 0.001, max: 1, noNaN: true });
  const opinions = fc.tuple(share, share, share, share).map((raw): Posterior => {
    const sum = raw.reduce((all, value) => all + value, 0);
    const [a, b, c, none] = raw.map((value) => value / sum);
    return { causes: Float64Array.of(a ?? 0, b ?? 0, c ?? 0), noneFits: none ?? 0 };
  });

  const cases = (...shares: number[]) => ({ logs: Float64Array.from(shares, Math.log), weight: 0.5 });

  it("adds up to 1", () => {
    fc.assert(
      fc.property(opinions, opinions, share, (before, { causes: other }, weight) => {
        const pooled = poolOpinions(before, [
          { logs: other.map(Math.log), weight },
          { logs: other.map(Math.log), noneLog: -1, weight },
        ]);
        expect(total(pooled.causes) + pooled.noneFits).toBeCloseTo(1, 12);
      }),
    );
  });

  it("is Bayes' rule where a source counts in full: worked by hand", () => {
    // .5 x .2, .3 x .6, .1 x .2 and none .1 x .4: .1, .18, .02 and .04 of .34.
    const before = { causes: Float64Array.of(0.5, 0.3, 0.1), noneFits: 0.1 };
    const logs = Float64Array.of(0.2, 0.6, 0.2).map(Math.log);
    const { causes, noneFits } = poolOpinions(before, [{ logs, noneLog: Math.log(0.4), weight: 1 }]);
    expect([...causes].map((p) => p.toFixed(6))).toEqual(["0.294118", "0.529412", "0.058824"]);
    expect(noneFits).toBeCloseTo(0.04 / 0.34, 12);
  });

  it("changes nothing where a source counts nothing, or speaks for all alike", () => {
    fc.assert(
      fc.property(opinions, opinions, (before, { causes: other }) => {
        const logs = other.map(Math.log);
        for (const said of [
          { logs, noneLog: -3, weight: 0 },
          { logs: logs.map(() => -2), weight: 0.7 },
        ]) {
          const pooled = poolOpinions(before, [said]);
          for (const [row, p] of pooled.causes.entries()) expect(p).toBeCloseTo(before.causes[row] ?? 0, 12);
        }
      }),
    );
  });

  it("raises a cause that the cases speak for, against one that they do not", () => {
    fc.assert(
      fc.property(opinions, (before) => {
        const [a = 0, b = 1] = poolOpinions(before, [cases(0.8, 0.1, 0.1)]).causes;
        const [c = 0, d = 1] = poolOpinions(before, [cases(0.1, 0.8, 0.1)]).causes;
        expect(a / b).toBeGreaterThan(c / d);
      }),
    );
  });

  it("does not let the cases bring back what is impossible", () => {
    const before = { causes: Float64Array.of(0, 0.5, 0.4), noneFits: 0.1 };
    expect(poolOpinions(before, [cases(1, 0.01, 0.01)]).causes[0]).toBe(0);
    const nothing = { causes: new Float64Array(3), noneFits: 1 };
    expect(poolOpinions(nothing, [cases(1, 0.01, 0.01)])).toEqual(nothing);
  });
});
