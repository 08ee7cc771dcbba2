import { describe, expect, it } from "vitest";
import { planChecks } from "@/lib/diagnosis/plan/planChecks";
import type { PlanProblem } from "@/lib/diagnosis/plan/planProblem";

const good: PlanProblem = {
  states: [
    { id: "a", probability: 3 },
    { id: "b", probability: 1 },
  ],
  checks: [
    {
      id: "look",
      minutes: 1,
      riskMinutes: 0,
      outcomes: [
        { id: "yes", likelihoods: [0.9, 0.2] },
        { id: "no", likelihoods: [0.1, 0.8] },
      ],
    },
  ],
  repairs: [{ id: "mend", minutes: 1, riskMinutes: 0, mends: [1, 0], failureMinutes: [0, 10] }],
};
const [look] = good.checks;
const [mend] = good.repairs;
if (!look || !mend)
  throw new Error("the good problem must have a check and a repair; got none; mend the test");

describe("a planning problem", () => {
  it("has probabilities that are scaled to add up to 1", () => {
    expect(planChecks(good).root.belief).toEqual([0.75, 0.25]);
    expect(planChecks(good).acting).toEqual({ repair: "mend", mendsProbability: 0.75, expectedMinutes: 3.5 });
  });

  it.each<[string, Partial<PlanProblem>, string]>([
    ["no possible state", { states: [] }, "some state must be possible"],
    [
      "a probability below 0",
      { states: [{ id: "a", probability: -1 }] },
      "probability of a must be 0 or more; got -1",
    ],
    ["no repair", { repairs: [] }, "there must be a repair"],
    [
      "likelihoods that do not add up",
      { checks: [{ ...look, outcomes: look.outcomes.slice(1) }] },
      "likelihoods must add up to 1; got 0.1 for look given a",
    ],
    [
      "a likelihood too few",
      { checks: [{ ...look, outcomes: [{ id: "yes", likelihoods: [1] }] }] },
      "must have one number a state; got 1 for 2",
    ],
    [
      "endless minutes",
      { checks: [{ ...look, minutes: Number.POSITIVE_INFINITY }] },
      "minutes must be finite",
    ],
    [
      "minutes that are no number",
      { checks: [{ ...look, riskMinutes: Number.NaN }] },
      "risk minutes of look must be 0 or more; got NaN",
    ],
    ["a check twice", { checks: [look, look] }, "an id must stand once; got look twice"],
    [
      "a need that is not there",
      { checks: [{ ...look, needs: ["cap"] }] },
      "a need must name a check or an opener; got cap",
    ],
    [
      "a chance of mending over 1",
      { repairs: [{ ...mend, mends: [2, 0] }] },
      "mends of mend must be at most 1; got 2",
    ],
    [
      "too many states",
      { states: Array.from({ length: 31 }, (_, at) => ({ id: `${at}`, probability: 1 })) },
      "there must be at most 30 states; got 31",
    ],
  ])("with %s is refused", (_, change, message) => {
    expect(() => planChecks({ ...good, ...change })).toThrow(message);
  });
});
