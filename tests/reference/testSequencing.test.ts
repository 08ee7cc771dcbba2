import { describe, expect, it } from "vitest";
import { greedyPlan } from "@/lib/diagnosis/plan/greedyPlan";
import { planChecks } from "@/lib/diagnosis/plan/planChecks";
import type { PlanProblem } from "@/lib/diagnosis/plan/planProblem";

/**
 * Five tests of one unit each on states of which one holds, until it is known which: naming the state costs nothing, naming it wrongly
 * is not allowed.
 * Source: Pattipati & Alexandridis 1990, Application of heuristic search and information theory to sequential fault diagnosis
 * (example from memory). Optimum, information gain's cost and Huffman's bound were recomputed by exhaustive search.
 */
const signatures = ["00000", "01001", "00110", "10011", "11000", "11111"];

function sequencing(probabilities: readonly number[]): PlanProblem {
  return {
    states: probabilities.map((probability, at) => ({ id: `s${at}`, probability })),
    checks: [0, 1, 2, 3, 4].map((test) => ({
      id: `t${test + 1}`,
      minutes: 1,
      riskMinutes: 0,
      outcomes: ["0", "1"].map((outcome) => ({
        id: outcome,
        likelihoods: probabilities.map((_, at) => Number(signatures[at]?.[test] === outcome)),
      })),
    })),
    repairs: probabilities.map((_, own) => ({
      id: `s${own}`,
      minutes: 0,
      riskMinutes: 0,
      mends: probabilities.map((_p, at) => Number(at === own)),
      failureMinutes: probabilities.map(() => Number.POSITIVE_INFINITY),
    })),
  };
}

const six = sequencing([0.7, 0.01, 0.02, 0.1, 0.05, 0.12]);
const five = sequencing([0.7, 0.01, 0.02, 0.1, 0.17]);
/** Work at which the planner is stopped; trying every order of tests meets at least three times as many beliefs. */
const fewBeliefs = 60;

describe("test sequencing", () => {
  it.each([
    ["six states", six, { optimum: 2.18, greedy: 2.86, huffman: 1.59, first: ["t2", "t4"] }],
    ["five states", five, { optimum: 2.12, greedy: 2.71, huffman: 1.46, first: ["t2"] }],
  ] as const)(
    "of %s reaches the published optimum, which information gain misses",
    (_, problem, published) => {
      const plan = planChecks(problem);
      expect(plan.exact).toBe(true);
      expect(plan.expectedMinutes).toBeCloseTo(published.optimum, 9);
      expect(plan.boundMinutes).toBeCloseTo(published.optimum, 9);
      expect(published.first).toContain(plan.checking?.check);
      expect(greedyPlan(problem).expectedMinutes).toBeCloseTo(published.greedy, 9);
      // Before any search the bound is the Huffman code's length.
      expect(planChecks(problem, { limit: 1 }).boundMinutes).toBeCloseTo(published.huffman, 9);
    },
  );

  it.each([
    ["six states", six, 2.18],
    ["five states", five, 2.12],
  ] as const)(
    "of %s comes within a twentieth of the optimum when it is stopped early, and its bound shows that",
    (_, problem, optimum) => {
      const plan = planChecks(problem, { limit: fewBeliefs });
      expect(plan.expectedMinutes).toBeLessThanOrEqual(1.05 * optimum);
      expect(plan.expectedMinutes).toBeLessThanOrEqual(1.05 * plan.boundMinutes);
      expect(triedInEveryOrder(problem)).toBeGreaterThan(3 * fewBeliefs);
    },
  );
});

/** Beliefs met by asking every test that still parts the states, in every order. */
function triedInEveryOrder({ states, checks }: PlanProblem): number {
  const meet = (left: readonly number[]): number =>
    checks.reduce((met, { outcomes }) => {
      const parts = outcomes.map(({ likelihoods }) => left.filter((at) => likelihoods[at] === 1));
      return parts.some(({ length }) => length === left.length)
        ? met
        : parts.reduce((sum, part) => sum + meet(part), met);
    }, 1);
  return meet(states.map((_, at) => at));
}
