import { expect, it } from "vitest";
import { type GowerVariable, gowerSimilarity } from "@/lib/similarity/measures/gowerSimilarity";

const variables: GowerVariable[] = [
  { kind: "nominal", bothAbsent: "no" },
  { kind: "ordinal", ranks: ["free", "drags", "sticks"] },
  { kind: "numeric", range: 10, weight: 2 },
];

it("the coefficient is the weighted mean over what both know", () => {
  expect(gowerSimilarity(variables, ["yes", "free", "1"], ["no", "drags", "6"])).toBe(
    (0 + 0.5 + 2 * 0.5) / 4,
  );
  expect(gowerSimilarity(variables, ["yes", undefined, "1"], ["yes", "free", "1"])).toBe(1);
});

it("two that both lack an asymmetric character are not compared by it", () => {
  expect(gowerSimilarity(variables, ["no", "free", "1"], ["no", "sticks", "1"])).toBe(2 / 3);
});

it("there is no coefficient where nothing can be compared", () => {
  expect(gowerSimilarity(variables, ["no", undefined, "1"], ["no", "free", undefined])).toBeUndefined();
});
