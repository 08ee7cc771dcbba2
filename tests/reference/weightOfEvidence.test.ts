import { describe, expect, it } from "vitest";
import { buildBench } from "@/lib/consult/bench/bench";
import { consult } from "@/lib/consult/consult";
import { problemSchema } from "@/lib/consult/problem";
import { weighCauses } from "@/lib/diagnosis/posterior";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { smallCasebook } from "../lib/consult/smallCasebook";
import { smallVocabulary } from "../lib/reading/smallVocabulary";

/**
 * Weight of evidence in decibans: 10 log10 of the ratio of likelihoods. A ratio of 10 is 10 decibans, a ratio of 1 none,
 * and the weights of findings that are independent given the cause add up.
 * Source: Good 1950, Probability and the Weighing of Evidence, section 6.1 (from memory); the unit after Turing.
 */
const two: Vocabulary = {
  ...smallVocabulary,
  causes: new Map([...smallVocabulary.causes].filter(([id]) => id === "dirt" || id === "dent")),
};

/** A bench that has seen each outcome of each check in these shares of very many jobs of each cause. */
function benchOf(
  shares: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, number>>>>>>,
) {
  const bench = buildBench(two, smallCasebook([]));
  const jobs = 1e9;
  for (const [id, checks] of Object.entries(shares)) {
    for (const [check, outcomes] of Object.entries(checks)) {
      for (const [outcome, share] of Object.entries(outcomes)) {
        bench.model.learn({ causes: [{ id, share: share * jobs }], findings: new Map([[check, outcome]]) });
      }
    }
  }
  return bench;
}
const reasons = (
  bench: ReturnType<typeof benchOf>,
  cause: string,
  ...evidence: (readonly [string, string])[]
) => {
  const problem = problemSchema.parse({
    instrument: "trumpet",
    evidence: evidence.map(([check, found]) => ({ check, found })),
  });
  const entry = consult(problem, bench).causes.find(({ id }) => id === cause);
  return [...(entry?.for ?? []), ...(entry?.against ?? [])].map(({ check, decibans }) => [check, decibans]);
};

describe("weight of evidence", () => {
  const bench = benchOf({
    dent: { "casing-look": { dented: 0.8, sound: 0.2 }, deposits: { lime: 0.3, clean: 0.7 } },
    dirt: { "casing-look": { dented: 0.08, sound: 0.92 }, deposits: { lime: 0.3, clean: 0.7 } },
  });

  it("is 10 decibans for a ratio of 10, and as many against the other of two causes", () => {
    expect(reasons(bench, "dent", ["casing-look", "dented"])).toEqual([["casing-look", 10]]);
    expect(reasons(bench, "dirt", ["casing-look", "dented"])).toEqual([["casing-look", -10]]);
  });

  it("is 10 log10 (.92 / .2) = 6.6 decibans for what is 4.6 times as likely", () => {
    expect(reasons(bench, "dirt", ["casing-look", "sound"])).toEqual([["casing-look", 6.6]]);
  });

  it("is no reason where the ratio is 1", () => {
    expect(reasons(bench, "dent", ["deposits", "lime"])).toEqual([]);
  });

  it("adds up over findings to what the odds have gained", () => {
    const { model } = benchOf({
      dent: { "casing-look": { dented: 0.8, sound: 0.2 }, deposits: { lime: 0.1, clean: 0.9 } },
      dirt: { "casing-look": { dented: 0.08, sound: 0.92 }, deposits: { lime: 0.5, clean: 0.5 } },
    });
    const decibans = (findings: readonly (readonly [string, string])[]) => {
      const { causes } = weighCauses(model, new Map(findings), { nonePrior: 0 });
      const row = model.causes.indexOf("dent");
      return 10 * Math.log10((causes[row] ?? 0) / (causes[1 - row] ?? 1));
    };
    const gained =
      decibans([
        ["casing-look", "dented"],
        ["deposits", "lime"],
      ]) - decibans([]);
    // A ratio of 10 for the dent and of 5 against it: 10 - 6.9897.
    expect(gained).toBeCloseTo(10 - 10 * Math.log10(5), 4);
  });
});
