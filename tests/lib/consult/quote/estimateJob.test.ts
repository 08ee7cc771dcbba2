import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { buildBench } from "@/lib/consult/bench/bench";
import { likeCases } from "@/lib/consult/likeCases";
import { estimateJob } from "@/lib/consult/quote/estimateJob";
import { pastEstimates, stretchOf } from "@/lib/consult/quote/stretch";
import { curveShares } from "@/lib/estimate/minutesCurve";
import { smallVocabulary } from "../../reading/smallVocabulary";
import { dentCase, smallCasebook, smallCases } from "../smallCasebook";

const bench = buildBench(smallVocabulary, smallCasebook(smallCases));
const job = { ...dentCase, id: "9-9", path: dentCase.path.slice(0, 3) };
const estimateOf = (kase: Case, repairs: readonly string[]) =>
  estimateJob(kase, likeCases(kase, bench), repairs, bench);
const past = (minutes: number, like: number) => ({
  case: "1",
  minutes,
  curve: curveShares.map(() => like),
  mean: like,
});

describe("an estimate", () => {
  it("rises from half to nineteen in twenty, and says that so few cases are thin and teach no stretch", () => {
    const found = estimateOf(job, []);
    expect(found?.thin).toBe(true);
    expect(found?.learnedFrom).toBe(0);
    expect(found?.p50).toBeLessThanOrEqual(found?.p80 ?? 0);
    expect(found?.p80).toBeLessThanOrEqual(found?.p95 ?? 0);
    // The slowest of the small cases took 90 minutes.
    expect(found?.p95).toBeLessThanOrEqual(90);
  });

  it("never rests on the job itself", () => {
    expect(estimateOf(dentCase, [])?.like.map((one) => one.case.id)).not.toContain(dentCase.id);
  });

  it("tells of each repair how often it did harm, and counts only what like cases do not hold already", () => {
    const found = estimateOf(job, ["press-out"]);
    expect(found?.tail.repairs).toMatchObject([{ repair: "press-out" }]);
    expect(found?.tail.repairs[0]?.odds).toMatch(/^2 of 2 jobs like this one went wrong/);
    expect(found?.tail.repairs[0]?.chance).toBe(1);
    const held = (found?.like ?? []).filter((one) => one.case.harms.length > 0);
    const share =
      held.reduce((sum, { weight }) => sum + weight, 0) /
      (found?.like ?? []).reduce((sum, { weight }) => sum + weight, 0);
    expect(found?.tail.harmChance).toBeCloseTo(1 - share, 9);
  });

  it("without a repair in view adds nothing", () => {
    expect(estimateOf(job, [])?.tail).toEqual({ repairs: [], harmChance: 0, harmMinutes: 0 });
  });
});

describe("what is learned from past estimates", () => {
  it("is the factor that makes each share hold: jobs that take 1 to 20 tenths of what like ones took", () => {
    const stretch = stretchOf(Array.from({ length: 20 }, (_, at) => past(at + 1, 10)));
    expect(stretch.cases).toBe(20);
    // ceil(.8 x 21) = 17th smallest of the ratios .1, .2 ... 2.0
    expect(stretch.factors[curveShares.indexOf(0.8)]).toBeCloseTo(1.7, 9);
    expect(stretch.mean).toBeCloseTo(1.05, 9);
  });

  it("is nothing where fewer than nineteen teach it", () => {
    expect(stretchOf(Array.from({ length: 18 }, () => past(20, 10)))).toEqual({
      factors: [],
      mean: 1,
      cases: 0,
    });
  });

  it("samples the casebook evenly where it is large", () => {
    expect(pastEstimates(bench, 2).map((one) => one.case)).toEqual(["1-1", "1-3"]);
  });
});
