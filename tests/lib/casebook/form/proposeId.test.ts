import { describe, expect, it } from "vitest";
import { proposeId } from "@/lib/casebook/form/proposeId";

describe("the id proposed for a new case", () => {
  it.each([
    ["follows the highest number of the year", ["26-007", "26-003", "25-112"], "26-008"],
    ["begins the year at 001", ["25-112"], "26-001"],
    ["passes over ids of another form", ["26-007-b", "b-26-009", "26-x", "26-0000012"], "26-001"],
    ["grows a digit when three are used up", ["26-999"], "26-1000"],
  ])("%s", (_, taken, proposed) => {
    expect(proposeId(taken, "2026-11-25")).toBe(proposed);
  });
});
