import { expect, it } from "vitest";
import { nominalSimilarity } from "@/lib/similarity/measures/nominalSimilarity";

it("values without an order are alike only when they are the same", () => {
  expect(nominalSimilarity("dented", "dented")).toBe(1);
  expect(nominalSimilarity("dented", "worn")).toBe(0);
});
