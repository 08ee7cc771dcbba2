import { describe, expect, it } from "vitest";
import { buildBench } from "@/lib/consult/bench/bench";
import { casebookReport } from "@/lib/evaluation/casebookReport";
import { rankByHabit } from "@/lib/evaluation/rankByHabit";
import { rankByText } from "@/lib/evaluation/rankByText";
import { dentCase, dirtCase, smallCasebook, smallCases } from "../consult/smallCasebook";
import { smallVocabulary } from "../reading/smallVocabulary";

const bench = buildBench(smallVocabulary, smallCasebook(smallCases));

describe("the baselines", () => {
  it("rank by habit: the commonest root cause of the other cases of such an instrument comes first", () => {
    // Left out itself, one case each of dent, dirt and weak-spring remains: ties go by id.
    expect(rankByHabit(dentCase, bench)).toBe(1);
    expect(rankByHabit(dirtCase, bench)).toBe(Number.POSITIVE_INFINITY);
  });

  it("rank by text: the best hit's cause comes first, and the case itself is no hit", () => {
    expect(rankByText(dentCase, bench)).toBe(1);
    expect(rankByText(dirtCase, bench)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("casebookReport", () => {
  it("gives the whole, every family and both baselines over the same cases", () => {
    const report = casebookReport(bench);
    expect(report.n).toBe(4);
    expect(Object.values(report.families).reduce((sum, { n }) => sum + n, 0)).toBe(4);
    expect(report.baselines.textSearch.n).toBe(4);
    expect(report.baselines.commonestCause.n).toBe(4);
    expect(report.estimates.n).toBe(4);
    expect(report.missed).toHaveLength(Math.round(4 * (1 - report.hit1)));
  });
});
