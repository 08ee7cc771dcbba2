import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlanStep } from "@/lib/consult/answer";
import { type Bench, buildBench } from "@/lib/consult/bench/bench";
import { planAhead } from "@/lib/consult/checks/planAhead";
import { otherState, planProblemOf } from "@/lib/consult/checks/planProblemOf";
import { lookFurther } from "@/lib/consult/checks/planRepairsOf";
import { consult } from "@/lib/consult/consult";
import type { Finding } from "@/lib/consult/finding";
import { type ProblemInput, problemSchema } from "@/lib/consult/problem";
import { weighCauses } from "@/lib/diagnosis/posterior";
import type { Check } from "@/lib/vocabulary/check";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { smallVocabulary } from "../../reading/smallVocabulary";
import { smallCasebook, smallCases } from "../smallCasebook";

const bench = buildBench(smallVocabulary, smallCasebook(smallCases));
const ask = (input: ProblemInput, plan?: boolean) =>
  consult(problemSchema.parse(input), bench, plan === undefined ? {} : { plan });
const hangs: ProblemInput = { instrument: "trumpet", says: "2nd valve hangs, it was dropped" };
const stepsOf = (step: PlanStep): PlanStep[] => [
  step,
  ...(step.kind === "check" ? step.outcomes.flatMap(({ next }) => stepsOf(next)) : []),
];
const depthOf = (step: PlanStep): number =>
  step.kind === "check" ? 1 + Math.max(...step.outcomes.map(({ next }) => depthOf(next))) : 0;
const found = (check: string, outcome: string): [string, Finding] => [
  check,
  { check, outcome, part: undefined },
];

/** The small bench with some checks changed. */
function benchWith(changes: Readonly<Record<string, Partial<Check>>>): Bench {
  const vocabulary: Vocabulary = {
    ...smallVocabulary,
    checks: new Map([...smallVocabulary.checks].map(([id, check]) => [id, { ...check, ...changes[id] }])),
  };
  return buildBench(vocabulary, smallCasebook([]));
}
const brass = (id: string) => id !== "torn-pad";
const unasked = (of: Bench) => weighCauses(of.model, new Map(), { possible: brass });
const sure = (of: Bench, cause: string) => ({
  causes: Float64Array.from(of.model.causes, (id) => (id === cause ? 0.97 : 0)),
  noneFits: 0.03,
});

describe("the plan in an answer", () => {
  it("is there only when it was asked for, and leaves the rest of the answer as it is", () => {
    expect(ask(hangs)).not.toHaveProperty("plan");
    expect(ask(hangs, false)).not.toHaveProperty("plan");
    const { plan, ...rest } = ask(hangs, true);
    expect(rest).toEqual(ask(hangs));
    expect(plan?.actNow.expectedMinutes).toBeGreaterThan(0);
  });

  it("is null where nothing bears on a cause", () => {
    expect(ask({ says: "qwfp zxcv" }, true).plan).toBeNull();
    expect(ask({ instrument: "violin", says: "2nd valve hangs" }, true).plan).toBeNull();
  });

  it("is plain data, no deeper than four checks and no larger than forty steps, its chances adding up", () => {
    for (const says of [
      "2nd valve hangs",
      "all drag",
      "spring weak",
      "2nd valve hangs, it was dropped. dents",
    ]) {
      const { plan } = ask({ instrument: "trumpet", says }, true);
      if (!plan) throw new Error("there must be a plan; got none; mend the test");
      expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
      expect(depthOf(plan.next)).toBeLessThanOrEqual(4);
      expect(stepsOf(plan.next).length).toBeLessThanOrEqual(40);
      for (const step of stepsOf(plan.next))
        if (step.kind === "check")
          expect(step.outcomes.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 3);
    }
  });

  it("costs no more than acting at once, no less than its bound, and that no less than if the cause were known", () => {
    const pieces = fc.constantFrom(
      "2nd valve hangs",
      "dents",
      "maybe lime",
      "dropped",
      "spring weak",
      "bell bent",
    );
    fc.assert(
      fc.property(fc.uniqueArray(pieces, { minLength: 1, maxLength: 3 }), (said) => {
        const { plan } = ask({ instrument: "trumpet", says: said.join(". ") }, true);
        if (!plan) return;
        expect(plan.expectedMinutes).toBeLessThanOrEqual(plan.actNow.expectedMinutes);
        expect(plan.expectedMinutes).toBeGreaterThanOrEqual(plan.boundMinutes);
        expect(plan.boundMinutes).toBeGreaterThanOrEqual(plan.knownMinutes);
        expect(plan.next.expectedMinutes).toBe(plan.expectedMinutes);
      }),
      { numRuns: 20 },
    );
  });

  it("asks nothing that has been answered", () => {
    const answer = ask({ instrument: "trumpet", says: "2nd valve hangs, it was dropped. dents" }, true);
    const done = answer.understood.map(({ check }) => check);
    if (!answer.plan) throw new Error("there must be a plan; got none; mend the test");
    for (const step of stepsOf(answer.plan.next))
      if (step.kind === "check") expect(done).not.toContain(step.check);
  });
});

describe("planAhead", () => {
  it("acts at once when the cause is as good as known", () => {
    const plan = planAhead(bench, sure(bench, "dent"), new Map(), "trumpet");
    expect(plan?.next).toMatchObject({
      kind: "act",
      repair: "press-out",
      likeliest: { cause: "dent", probability: 0.97 },
    });
    expect(plan?.next).toHaveProperty("chance", 0.873);
  });

  it("looks further where no repair is known to mend it", () => {
    const plan = planAhead(bench, sure(bench, "dirt"), new Map(), "trumpet");
    expect(plan?.next).toMatchObject({ kind: "act", repair: null, chance: 0 });
  });

  it("has nothing to plan where no cause is possible", () => {
    const nothing = { causes: new Float64Array(bench.model.causes.length), noneFits: 1 };
    expect(planAhead(bench, nothing, new Map(), "violin")).toBeNull();
  });

  it("says what has to be opened for a check, and counts its minutes once", () => {
    // The plugs alone tell the dent from the rest, but the bell must be looked along first.
    const needy = benchWith({ plugs: { needs: ["bell-look"], minutes: 3 } });
    const belief = {
      causes: Float64Array.from(needy.model.causes, (id) => (id === "dent" ? 0.4 : id === "dirt" ? 0.6 : 0)),
      noneFits: 0,
    };
    const others = [...needy.vocabulary.checks.keys()].filter((id) => id !== "plugs" && id !== "bell-look");
    const keyed = new Map(others.map((id) => found(id, "nothing")));
    const plan = planAhead(needy, belief, keyed, "trumpet");
    expect(plan?.next).toMatchObject({
      kind: "check",
      check: "plugs",
      minutes: 4,
      opens: [{ check: "bell-look" }],
    });
    const opened = planAhead(needy, belief, new Map([...keyed, found("bell-look", "straight")]), "trumpet");
    expect(opened?.next).toMatchObject({ kind: "check", check: "plugs", minutes: 3, opens: [] });
  });
});

describe("planProblemOf", () => {
  it("predicts every outcome as the whole model does, the causes that are not listed included", () => {
    const belief = unasked(bench);
    const problem = planProblemOf(bench, belief, new Map(), "trumpet");
    expect(problem?.states.at(-1)?.id).toBe(otherState);
    expect(problem?.checks.length).toBeGreaterThan(3);
    for (const { id, outcomes } of problem?.checks ?? []) {
      for (const { id: outcome, likelihoods } of outcomes) {
        const planned = problem?.states.reduce(
          (sum, state, at) => sum + state.probability * (likelihoods[at] ?? 0),
          0,
        );
        const row = bench.model.likelihoods(id, outcome) ?? [];
        const whole = belief.causes.reduce(
          (sum, p, at) => sum + p * (row[at] ?? 0),
          belief.noneFits / outcomes.length,
        );
        expect(planned).toBeCloseTo(whole, 12);
      }
    }
  });

  it("leaves a check that could do lasting harm out while a safer one tells nearly as much", () => {
    const belief = unasked(bench);
    const ids = (of: Bench) =>
      planProblemOf(of, belief, new Map(), "trumpet")?.checks.map(({ id }) => id) ?? [];
    expect(ids(benchWith({}))).toContain("plugs");
    expect(ids(benchWith({ plugs: { risk: 4 } }))).not.toContain("plugs");
  });

  it("holds a repair the riskier, the more often it did harm", () => {
    const belief = unasked(bench);
    const riskOf = (of: Bench) =>
      planProblemOf(of, belief, new Map(), "trumpet")?.repairs.find(({ id }) => id === "press-out")
        ?.riskMinutes ?? 0;
    // Two jobs, both with harm, beside ten by which class 3 stands for 20 minutes: (200 + 480) / 12.
    expect(riskOf(benchWith({}))).toBe(20);
    expect(riskOf(bench)).toBeCloseTo(680 / 12, 12);
  });

  it("lets a repair that does not mend cost looking further and then the cause's own repair", () => {
    const problem = planProblemOf(benchWith({}), unasked(bench), new Map(), "trumpet");
    const dent = problem?.states.findIndex(({ id }) => id === "dent") ?? -1;
    const further = problem?.repairs.find(({ id }) => id === lookFurther);
    // Two hours of looking, 20 minutes of pressing and 20 for its risk.
    expect(further?.failureMinutes[dent]).toBe(160);
    expect(further?.mends.every((p) => p === 0)).toBe(true);
    expect(problem?.repairs.find(({ id }) => id === "press-out")?.mends[dent]).toBe(0.9);
  });
});
