import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { rootCauses } from "@/lib/casebook/rootCauses";
import { openBench } from "@/lib/consult/bench/openBench";
import { withoutCase } from "@/lib/consult/bench/withoutCase";
import { brierScore } from "@/lib/study/answer/brierScore";
import { checksMade } from "@/lib/study/asking/checksMade";
import { legalAsks } from "@/lib/study/asking/legalAsks";
import { openForStudy } from "@/lib/study/asking/openForStudy";
import { studyEvidence } from "@/lib/study/asking/studyEvidence";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { leadingCause } from "@/lib/study/review/leadingCause";
import { plannedAsks } from "@/lib/study/review/plannedAsks";
import { scorePath } from "@/lib/study/review/scorePath";
import { studyBelief } from "@/lib/study/review/studyBelief";
import { walkStudy } from "@/lib/study/review/walkStudy";
import { enoughProbability } from "@/lib/study/review/whenEnough";
import { familyOf } from "@/lib/vocabulary/familyOf";

const { bench } = openBench({});
const { vocabulary, model } = bench;
const jobs = [...bench.cases.values()].filter(isFitForStudy);

/** A way's cost in minutes, risk included, and what the evidence that it gathered would score. */
function judge(kase: Case, asks: readonly string[]) {
  const { checks, beliefs } = walkStudy(kase, asks, bench);
  const score = scorePath(checks);
  const causes = beliefs.at(-1)?.causes ?? [];
  const named = model.causes.map((cause, row) => ({ cause, sure: causes[row] ?? 0 }));
  return {
    minutes: score.minutes + score.riskMinutes,
    brier: brierScore(named, rootCauses(kase), model.causes),
  };
}

/** The same numbers in the same order every time. Source: the linear congruence of Numerical Recipes, section 7.1. */
function drawer(seed: number) {
  let state = seed;
  return (below: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Asks at random for what is open and leads to something that the job checked, until the evidence has spoken. */
function randomAsks(kase: Case, draw: (below: number) => number): string[] {
  const made = checksMade(kase, vocabulary);
  const asks: string[] = [];
  for (;;) {
    const { settled, findings } = studyEvidence(kase, asks, vocabulary);
    const leading = leadingCause(studyBelief(kase, findings, bench), model.causes);
    if ((leading?.probability ?? 0) > enoughProbability) return asks;
    const open = openForStudy(vocabulary, kase.instrument, settled);
    const leads = (id: string) =>
      made.has(id) || open.some(({ check, first }) => first.includes(id) && made.has(check.id));
    const choice = open.filter(({ check, first }) => first.length === 0 && leads(check.id));
    const next = choice[draw(choice.length)];
    if (!next) return asks;
    asks.push(next.check.id);
  }
}

const fewestJobs = 10;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("past jobs to study", () => {
  it("are nearly all of the casebook", () => {
    expect(jobs.length).toBeGreaterThan(0.9 * bench.cases.size);
  });

  it("are gone through by the bench in a way that is allowed", () => {
    for (const kase of jobs) {
      const planned = withoutCase(bench, kase, () => plannedAsks(kase, bench));
      expect(legalAsks(kase, planned, vocabulary)).toEqual(planned);
    }
  });

  it("take the bench less time and risk on average than ways drawn at random, and never leave it worse informed, draw after draw and family by family", () => {
    const ways = jobs.map((kase, at) =>
      withoutCase(bench, kase, () => ({
        family: familyOf(vocabulary, kase.instrument),
        planned: judge(kase, plannedAsks(kase, bench)),
        random: [1, 2, 3].map((seed) => judge(kase, randomAsks(kase, drawer(1000 * seed + at)))),
      })),
    );
    for (const draw of [0, 1, 2]) {
      const random = ways.flatMap((way) => way.random[draw] ?? []);
      expect(mean(ways.map(({ planned }) => planned.minutes))).toBeLessThan(
        mean(random.map(({ minutes }) => minutes)),
      );
      expect(mean(ways.map(({ planned }) => planned.brier))).toBeLessThanOrEqual(
        mean(random.map(({ brier }) => brier)),
      );
    }
    for (const family of new Set(ways.map((way) => way.family))) {
      const own = ways.filter((way) => way.family === family);
      // Over two jobs an average says nothing.
      if (own.length < fewestJobs) continue;
      const drawn = own.flatMap(({ random }) => random);
      expect(mean(own.map(({ planned }) => planned.minutes)), family).toBeLessThan(
        mean(drawn.map(({ minutes }) => minutes)),
      );
    }
  });
});
