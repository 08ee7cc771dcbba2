import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greedyPlan } from "@/lib/diagnosis/plan/greedyPlan";
import { planChecks } from "@/lib/diagnosis/plan/planChecks";
import type { PlanCheck, PlanProblem, PlanRepair } from "@/lib/diagnosis/plan/planProblem";
import type { PlanNode } from "@/lib/diagnosis/plan/planTree";
import { anyPlanProblem, largePlanProblem } from "./anyPlanProblem";
import { naiveMinutes } from "./naivePlan";

/** As near as sums of a few thousand roundings come. */
const rounding = 1e-7;
const repair = (id: string, mends: readonly number[], minutes: number, failure: number): PlanRepair => ({
  id,
  minutes,
  riskMinutes: 0,
  mends,
  failureMinutes: mends.map(() => failure),
});
const yesNo = (id: string, minutes: number, yes: readonly number[], needs: string[] = []): PlanCheck => ({
  id,
  minutes,
  riskMinutes: 0,
  needs,
  outcomes: [
    { id: "yes", likelihoods: yes },
    { id: "no", likelihoods: yes.map((p) => 1 - p) },
  ],
});
const nodesOf = (node: PlanNode): PlanNode[] => [
  node,
  ...(node.kind === "check" ? node.outcomes.flatMap(({ next }) => nodesOf(next)) : []),
];
const depthOf = (node: PlanNode): number =>
  node.kind === "check" ? 1 + Math.max(...node.outcomes.map(({ next }) => depthOf(next))) : 0;

/** Follows a tree with weights of its own: what the plan costs by the problem alone, cut ends at what they claim. */
function costOfFollowing({ states, checks, openers = [], repairs }: PlanProblem, root: PlanNode): number {
  const work = new Map([...openers, ...checks].map((one) => [one.id, one.minutes + one.riskMinutes]));
  const follow = (node: PlanNode, weights: readonly number[], opened: readonly string[]): number => {
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    if (node.kind === "later") return total * node.expectedMinutes;
    if (node.kind === "act") {
      const acting = repairs.find(({ id }) => id === node.repair);
      return weights.reduce((sum, weight, at) => {
        const fails = 1 - (acting?.mends[at] ?? 0);
        const failing = fails > 0 ? fails * (acting?.failureMinutes[at] ?? 0) : 0;
        return weight > 0
          ? sum + weight * ((acting?.minutes ?? 0) + (acting?.riskMinutes ?? 0) + failing)
          : sum;
      }, 0);
    }
    const check = checks.find(({ id }) => id === node.check);
    const toOpen = [node.check, ...node.opens].filter((id) => !opened.includes(id));
    const minutes = toOpen.reduce((sum, id) => sum + (work.get(id) ?? 0), 0);
    return node.outcomes.reduce((sum, { outcome, next }) => {
      const row = check?.outcomes.find(({ id }) => id === outcome)?.likelihoods ?? [];
      const joint = weights.map((weight, at) => weight * (row[at] ?? 0));
      return sum + follow(next, joint, [...opened, ...toOpen]);
    }, total * minutes);
  };
  const total = states.reduce((sum, { probability }) => sum + probability, 0);
  return follow(
    root,
    states.map(({ probability }) => probability / total),
    [],
  );
}

describe("planChecks on small problems", () => {
  it("costs what trying every order of checks finds to be least, and knows that it does", () => {
    fc.assert(
      fc.property(anyPlanProblem, (problem) => {
        const plan = planChecks(problem);
        expect(plan.expectedMinutes).toBeCloseTo(naiveMinutes(problem), 6);
        expect(plan.exact).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("never costs less than the bound or more than acting at once, however little work it is given", () => {
    fc.assert(
      fc.property(anyPlanProblem, fc.constantFrom(1, 2, 5, 10, 20, 50), (problem, limit) => {
        const least = naiveMinutes(problem);
        const { boundMinutes, expectedMinutes, knownMinutes, acting } = planChecks(problem, { limit });
        expect(boundMinutes).toBeLessThanOrEqual(least + rounding);
        expect(expectedMinutes).toBeGreaterThanOrEqual(least - rounding);
        expect(expectedMinutes).toBeLessThanOrEqual(acting.expectedMinutes + rounding);
        expect(knownMinutes).toBeLessThanOrEqual(boundMinutes + rounding);
      }),
      { numRuns: 500 },
    );
  });

  it("never costs more than information gain's plan", () => {
    fc.assert(
      fc.property(anyPlanProblem, (problem) => {
        expect(planChecks(problem).expectedMinutes).toBeLessThanOrEqual(
          greedyPlan(problem).expectedMinutes + rounding,
        );
      }),
      { numRuns: 500 },
    );
  });

  it("draws a tree that costs what it says when it is followed", () => {
    fc.assert(
      fc.property(
        anyPlanProblem,
        fc.constantFrom(1, 30, 20_000),
        fc.integer({ min: 1, max: 9 }),
        (problem, limit, nodes) => {
          for (const { root } of [
            planChecks(problem, { limit }),
            planChecks(problem, { limit, nodes }),
            greedyPlan(problem),
          ])
            expect(costOfFollowing(problem, root)).toBeCloseTo(root.expectedMinutes, 6);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("has outcomes whose probabilities add up to 1, and beliefs that do", () => {
    fc.assert(
      fc.property(anyPlanProblem, (problem) => {
        for (const node of nodesOf(planChecks(problem).root)) {
          expect(node.belief.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
          if (node.kind === "check")
            expect(node.outcomes.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  it("does not care in which order states, checks and repairs are given", () => {
    fc.assert(
      fc.property(anyPlanProblem, (problem) => {
        const turned: PlanProblem = {
          ...problem,
          states: problem.states.toReversed(),
          checks: problem.checks
            .map((check) => ({
              ...check,
              outcomes: check.outcomes.map((one) => ({ ...one, likelihoods: one.likelihoods.toReversed() })),
            }))
            .toReversed(),
          repairs: problem.repairs
            .map((one) => ({
              ...one,
              mends: one.mends.toReversed(),
              failureMinutes: one.failureMinutes.toReversed(),
            }))
            .toReversed(),
        };
        expect(planChecks(turned).expectedMinutes).toBeCloseTo(planChecks(problem).expectedMinutes, 6);
      }),
    );
  });

  it("holds the same belief whichever way it was reached", () => {
    // Two erring checks in either order: the belief after both is one node, worked out once.
    const problem: PlanProblem = {
      states: [
        { id: "dirt", probability: 0.6 },
        { id: "dent", probability: 0.4 },
      ],
      checks: [yesNo("look", 1, [0.2, 0.7]), yesNo("feel", 1, [0.3, 0.9])],
      repairs: [repair("wash", [1, 0], 5, 50), repair("press", [0, 1], 5, 50)],
    };
    // The prior; two outcomes of each check; four after both, met from either side: 1 + 4 + 8 meetings.
    expect(planChecks(problem).beliefs).toBe(13);
    const { root } = planChecks(problem);
    const after = nodesOf(root).filter(({ kind, belief }) => kind === "act" && belief[0] !== 0.6);
    // By Bayes' rule: .4 x .7 x .9 against .6 x .2 x .3.
    expect(after.some(({ belief }) => Math.abs((belief[1] ?? 0) - 0.252 / 0.288) < 1e-12)).toBe(true);
  });
});

describe("planChecks on openings", () => {
  const problem = (cap: number): PlanProblem => ({
    states: [
      { id: "a", probability: 0.4 },
      { id: "b", probability: 0.3 },
      { id: "c", probability: 0.3 },
    ],
    checks: [yesNo("inside", 1, [1, 0, 0], ["cap"]), yesNo("below", 1, [0, 1, 0], ["cap"])],
    openers: [{ id: "cap", minutes: cap, riskMinutes: 1 }],
    repairs: [0, 1, 2].map((own) =>
      repair(
        `mend ${own}`,
        [0, 1, 2].map((at) => Number(at === own)),
        0,
        100,
      ),
    ),
  });

  it("pays for opening the way once", () => {
    const { root, expectedMinutes } = planChecks(problem(4));
    // The cap 4 + 1, the first look 1, and in 6 of 10 the second look 1.
    expect(expectedMinutes).toBeCloseTo(6.6, 9);
    expect(root).toMatchObject({ kind: "check", check: "inside", opens: ["cap"], minutes: 6 });
    const second = nodesOf(root).find((node) => node.kind === "check" && node.check === "below");
    expect(second).toMatchObject({ opens: [], minutes: 1 });
  });

  it("does not open what costs more than acting on a guess", () => {
    // The best guess fails in 6 of 10: 60 minutes. Both looks cost 1.6, the cap 1 of risk: 57.4 for the cap come to the same.
    expect(planChecks(problem(57.3)).root.kind).toBe("check");
    expect(planChecks(problem(57.4)).root).toMatchObject({
      kind: "act",
      repair: "mend 0",
      mendsProbability: 0.4,
    });
  });

  it("lets a check that opens the way for another be asked by itself, first", () => {
    const chained: PlanProblem = {
      ...problem(1),
      checks: [yesNo("inside", 1, [0, 1, 0], ["cap off"]), yesNo("cap off", 3, [1, 0, 0])],
    };
    const { root, expectedMinutes } = planChecks(chained);
    // The cap 3; where that does not tell, 6 of 10, the look 1.
    expect(root).toMatchObject({ kind: "check", check: "cap off", minutes: 3 });
    expect(expectedMinutes).toBeCloseTo(3.6, 9);
  });

  it("tells the same belief with the way open from that with the way shut", () => {
    // Outside and inside part the same states, then in 4 of 10 the look below follows, for which the cap, 4 + 1, must be off.
    const twoWays: PlanProblem = {
      ...problem(4),
      states: ["a", "b", "c"].map((id, at) => ({ id, probability: [0.6, 0.2, 0.2][at] ?? 0 })),
      checks: [
        yesNo("outside", 5, [1, 0, 0]),
        yesNo("inside", 1, [1, 0, 0], ["cap"]),
        yesNo("below", 1, [0, 1, 0], ["cap"]),
      ],
    };
    const { root, expectedMinutes } = planChecks(twoWays);
    // Inside first 6 + .4 x 1; outside first 5 + .4 x 6; below first 6 + .8 x 1.
    expect(root).toMatchObject({ kind: "check", check: "inside" });
    expect(expectedMinutes).toBeCloseTo(6.4, 9);
  });

  it("takes a circle of needs for one opening", () => {
    const circle: PlanProblem = {
      ...problem(1),
      checks: [yesNo("inside", 1, [1, 0, 0], ["below"]), yesNo("below", 2, [0, 1, 0], ["inside"])],
    };
    expect(planChecks(circle).expectedMinutes).toBeCloseTo(3, 9);
  });
});

describe("planChecks on problems too large to finish", () => {
  it("stays between its bound and information gain's plan by the share of work that this is given", () => {
    fc.assert(
      fc.property(largePlanProblem, fc.constantFrom(500, 3000), (problem, limit) => {
        const plan = planChecks(problem, { limit });
        expect(plan.boundMinutes).toBeGreaterThan(plan.knownMinutes);
        expect(plan.boundMinutes).toBeLessThanOrEqual(plan.expectedMinutes);
        expect(plan.expectedMinutes).toBeLessThanOrEqual(
          greedyPlan(problem, { limit: limit * 0.75 }).expectedMinutes + rounding,
        );
        // A belief is opened up as a whole: 12 checks of at most 5 outcomes.
        expect(plan.beliefs).toBeLessThan(limit + 60);
      }),
      { numRuns: 12 },
    );
  });

  it("gives a better plan and no worse a bound for twenty times the work", () => {
    fc.assert(
      fc.property(largePlanProblem, (problem) => {
        const [little, more] = [planChecks(problem, { limit: 300 }), planChecks(problem, { limit: 6000 })];
        expect(more.expectedMinutes).toBeLessThan(little.expectedMinutes);
        expect(more.boundMinutes).toBeGreaterThanOrEqual(little.boundMinutes);
      }),
      { numRuns: 8 },
    );
  });

  it("draws no more than it is asked for and says where the tree is cut", () => {
    fc.assert(
      fc.property(
        largePlanProblem,
        fc.integer({ min: 6, max: 60 }),
        fc.integer({ min: 1, max: 4 }),
        (problem, nodes, depth) => {
          const { root, expectedMinutes } = planChecks(problem, { limit: 2000, nodes, depth });
          const all = nodesOf(root);
          expect(all.length).toBeLessThanOrEqual(nodes);
          expect(depthOf(root)).toBeLessThanOrEqual(depth);
          expect(root.expectedMinutes).toBe(expectedMinutes);
          expect(all.some(({ kind }) => kind === "later")).toBe(true);
        },
      ),
      { numRuns: 8 },
    );
  });

  it("tells a dozen states apart by a dozen certain checks to the end", () => {
    // Each of twelve causes alike, found by halving: 4 of them in 3 checks, 8 in 4 is the Huffman code's 44 / 12.
    const states = Array.from({ length: 12 }, (_, at) => ({ id: `state ${at}`, probability: 1 }));
    const halves = (bit: number) => states.map((_, at) => Number((at & (1 << bit)) > 0));
    const bits = [0, 1, 2, 3].map((bit) => yesNo(`bit ${bit}`, 1, halves(bit)));
    const single = [0, 1, 2, 3, 4, 5, 6, 7].map((own) =>
      yesNo(
        `only ${own}`,
        1,
        states.map((_, at) => Number(at === own)),
      ),
    );
    const plan = planChecks({
      states,
      checks: [...single, ...bits],
      repairs: states.map(({ id }, own) =>
        repair(
          id,
          states.map((_, at) => Number(at === own)),
          0,
          Number.POSITIVE_INFINITY,
        ),
      ),
    });
    expect(plan.exact).toBe(true);
    expect(plan.expectedMinutes).toBeCloseTo(44 / 12, 9);
  });
});
