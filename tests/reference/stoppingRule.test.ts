import { describe, expect, it } from "vitest";
import { planChecks } from "@/lib/diagnosis/plan/planChecks";
import type { PlanProblem } from "@/lib/diagnosis/plan/planProblem";

/**
 * When to stop checking: act when the best repair now costs at most what checking on costs.
 * Source: Heckerman, Breese & Rommelse 1995, Decision-theoretic troubleshooting, for the rule; the example was worked by hand.
 *
 * Dirt 7 in 10, dent 3 in 10. Washing takes 20 minutes, mends dirt, and costs 60 more where it was the dent; pressing takes 40, mends
 * the dent, and costs 100 more where it was dirt. Looking at the casing shows the dent in 9 of 10, and something like it in 1 of 10
 * that have none.
 *
 *   wash now    20 + .3 x 60 = 38          press now   40 + .7 x 100 = 110
 *   dented, .34 = .27 + .07:     press  .34 x 40 + .07 x 100 = 20.6    (wash .34 x 20 + .27 x 60 = 23)
 *   not dented, .66 = .03 + .63: wash   .66 x 20 + .03 x 60  = 15
 *   look first  minutes + 35.6
 */
const problem = (lookMinutes: number, riskMinutes = 0): PlanProblem => ({
  states: [
    { id: "dirt", probability: 0.7 },
    { id: "dent", probability: 0.3 },
  ],
  checks: [
    {
      id: "look",
      minutes: lookMinutes,
      riskMinutes,
      outcomes: [
        { id: "dented", likelihoods: [0.1, 0.9] },
        { id: "sound", likelihoods: [0.9, 0.1] },
      ],
    },
  ],
  repairs: [
    { id: "wash", minutes: 20, riskMinutes: 0, mends: [1, 0], failureMinutes: [60, 60] },
    { id: "press", minutes: 40, riskMinutes: 0, mends: [0, 1], failureMinutes: [100, 100] },
  ],
});

describe("when to act", () => {
  it("looks first while looking takes less than 2.4 minutes", () => {
    const { root, acting, checking, expectedMinutes } = planChecks(problem(2));
    expect(acting).toEqual({ repair: "wash", mendsProbability: 0.7, expectedMinutes: 38 });
    expect(checking?.expectedMinutes).toBeCloseTo(37.6, 12);
    expect(expectedMinutes).toBeCloseTo(37.6, 12);
    expect(root).toMatchObject({
      kind: "check",
      check: "look",
      outcomes: [
        { outcome: "dented", next: { kind: "act", repair: "press" } },
        { outcome: "sound", next: { kind: "act", repair: "wash" } },
      ],
    });
  });

  it("acts at once where looking costs more, and says by how much", () => {
    const { root, checking, expectedMinutes } = planChecks(problem(3));
    expect(root).toMatchObject({ kind: "act", repair: "wash" });
    expect(root).toHaveProperty("mendsProbability", 0.7);
    expect(expectedMinutes).toBe(38);
    expect(checking?.check).toBe("look");
    expect(checking?.expectedMinutes).toBeCloseTo(38.6, 12);
  });

  it("acts where both cost the same", () => {
    expect(planChecks(problem(2.4)).root.kind).toBe("act");
  });

  it("counts the risk of looking as minutes", () => {
    expect(planChecks(problem(2, 0.3)).root.kind).toBe("check");
    expect(planChecks(problem(2, 0.5)).root.kind).toBe("act");
  });

  it("prices knowing: 26 minutes if the cause were known, 7 in 10 of 20 and 3 in 10 of 40", () => {
    expect(planChecks(problem(2)).knownMinutes).toBeCloseTo(26, 12);
  });
});
