import { describe, expect, it } from "vitest";
import { problemSchema } from "@/lib/consult/problem";
import { fullProblem } from "./fullProblem";

const messages = (input: unknown) =>
  problemSchema.safeParse(input).error?.issues.map(({ message }) => message) ?? [];

describe("problemSchema", () => {
  it("takes the problem with every key", () => {
    expect(problemSchema.parse(fullProblem)).toMatchObject(fullProblem);
  });

  it("takes the words alone, or the evidence alone", () => {
    expect(problemSchema.parse({ says: " it hangs " })).toEqual({
      says: "it hangs",
      evidence: [],
      leaveOut: [],
      gauges: [],
      diameters: [],
      swaps: [],
    });
    expect(problemSchema.safeParse({ evidence: [{ check: "dents", found: "none" }] }).success).toBe(true);
  });

  it("refuses a problem with neither, and says what must be there", () => {
    for (const empty of [{}, { instrument: "trumpet" }, { evidence: [] }, { gauges: fullProblem.gauges }]) {
      expect(messages(empty)).toEqual([
        "either says (free text) or evidence (checks with what was found) must be there",
      ]);
    }
  });

  it("refuses what is no problem at all", () => {
    for (const other of [null, 3, "it hangs", [], { says: 3 }, { says: null }]) {
      expect(problemSchema.safeParse(other).success).toBe(false);
    }
  });

  it("refuses a swap result that is none of the three, and a check without what was found", () => {
    expect(problemSchema.safeParse({ says: "", swaps: [{ a: "a", b: "b", result: "maybe" }] }).success).toBe(
      false,
    );
    expect(problemSchema.safeParse({ evidence: [{ check: "dents" }] }).success).toBe(false);
    expect(problemSchema.safeParse({ evidence: [{ check: "dents", found: " " }] }).success).toBe(false);
  });

  it("takes numbers for an id and for lengths, as text", () => {
    const { id, gauges } = problemSchema.parse({
      id: 7,
      says: "x",
      gauges: [{ part: "casing 2", passes: [0.669] }],
    });
    expect(id).toBe("7");
    expect(gauges[0]?.passes).toEqual(["0.669"]);
  });

  it("bounds how much it takes", () => {
    expect(problemSchema.safeParse({ says: "x".repeat(8000) }).success).toBe(true);
    expect(problemSchema.safeParse({ says: "x".repeat(8001) }).success).toBe(false);
  });
});
