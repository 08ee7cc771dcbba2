import { describe, expect, it } from "vitest";
import { faultProbabilities } from "../../lib/diagnosis/swaps/faultProbabilities";
import { minimalHittingSets } from "../../lib/diagnosis/swaps/minimalHittingSets";

/**
 * The circuit of three multipliers and two adders.
 * Source: Reiter 1987, A theory of diagnosis from first principles; de Kleer & Williams 1987, Diagnosing multiple faults.
 * The probabilities were recomputed in exact rational arithmetic over the 32 states of the five parts.
 */
const conflicts = [
  ["A1", "M1", "M2"],
  ["A1", "A2", "M1", "M3"],
];
const diagnoses = minimalHittingSets(conflicts);

describe("polybox", () => {
  it("has the four minimal diagnoses of the papers", () => {
    expect(diagnoses).toEqual([["A1"], ["M1"], ["A2", "M2"], ["M2", "M3"]]);
  });

  it("gives each part its probability at a fault prior of .01", () => {
    const found = faultProbabilities(
      diagnoses,
      new Map(["A1", "A2", "M1", "M2", "M3"].map((part) => [part, 0.01])),
    );
    expect(found?.get("A1")).toBeCloseTo(0.497635, 6);
    expect(found?.get("M1")).toBeCloseTo(0.497635, 6);
    expect(found?.get("M2")).toBeCloseTo(0.019609, 6);
    expect(found?.get("A2")).toBeCloseTo(0.01478, 6);
    expect(found?.get("M3")).toBeCloseTo(0.01478, 6);
  });
});
