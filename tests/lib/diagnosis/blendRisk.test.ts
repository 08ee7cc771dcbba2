import { describe, expect, it } from "vitest";
import { blendRisk } from "@/lib/diagnosis/blendRisk";

describe("blendRisk", () => {
  it("is what the class stands for while there is no record", () => {
    expect(blendRisk(20, { done: 0, harmed: 0 })).toBe(20);
  });

  it("moves with the record: down for jobs without harm, up for harm, 240 minutes a harm", () => {
    expect(blendRisk(20, { done: 10, harmed: 0 })).toBe(10);
    expect(blendRisk(20, { done: 10, harmed: 1 })).toBe(22);
    expect(blendRisk(0, { done: 90, harmed: 90 })).toBe(216);
  });
});
