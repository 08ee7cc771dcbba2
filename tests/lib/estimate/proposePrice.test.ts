import { describe, expect, it } from "vitest";
import { minutesCurve } from "@/lib/estimate/minutesCurve";
import { chanceOfLoss, chanceOfOverrun, proposePrice } from "@/lib/estimate/proposePrice";

/** Twenty-one evenly spaced jobs of 0 to 200 minutes, 100 on average. */
const curve = minutesCurve(Array.from({ length: 21 }, (_, at) => ({ minutes: 10 * at, weight: 1 })));
const job = { curve, mean: 100, harmChance: 0, harmMinutes: 0 };
const shop = { hourCost: 54, margin: 25 };

describe("a proposed price", () => {
  it("leaves the margin on average: 100 min at 54 an hour cost 90, a quarter of 120 is left", () => {
    expect(proposePrice(job, shop)).toBe(120);
    expect(proposePrice(job, { hourCost: 54, margin: 0 })).toBe(90);
  });

  it("pays for the harm to be expected: one in ten at 60 min more are 6 min", () => {
    // 106 min x .9 = 95.40; / .75 = 127.20
    expect(proposePrice({ ...job, harmChance: 0.1, harmMinutes: 60 }, shop)).toBe(127.2);
  });

  it("is rounded up to the tenth", () => {
    expect(proposePrice({ ...job, mean: 100.01 }, shop)).toBe(120.1);
  });

  it("loses money where the minutes cost more than it: 144 buys 160 min, four jobs in five", () => {
    expect(chanceOfLoss(144, job, shop)).toBeCloseTo(0.2, 9);
    // With harm: nine in ten as before, one in ten has but 100 min left.
    expect(chanceOfLoss(144, { ...job, harmChance: 0.1, harmMinutes: 60 }, shop)).toBeCloseTo(0.23, 9);
    expect(chanceOfOverrun(160, job)).toBeCloseTo(0.2, 9);
  });
});
