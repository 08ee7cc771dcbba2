import { expect, it } from "vitest";
import { findingSimilarity } from "@/lib/similarity/measures/findingSimilarity";

it("the same outcome counts full, a near one on a scale partly, a contrary one nothing", () => {
  expect(findingSimilarity(1, 1, 3, false)).toBe(1);
  expect(findingSimilarity(1, 2, 3, false)).toBe(0);
  expect(findingSimilarity(1, 2, 3, true)).toBe(0.5);
  expect(findingSimilarity(0, 2, 3, true)).toBe(0);
});
