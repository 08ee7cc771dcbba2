import { expect, it } from "vitest";
import { taxonomySimilarity } from "@/lib/similarity/measures/taxonomySimilarity";
import { buildTaxonomy } from "@/lib/similarity/taxonomy";

const taxonomy = buildTaxonomy([
  { id: "valve" },
  { id: "piston", parent: "valve" },
  { id: "casing", parent: "valve" },
  { id: "spring", parent: "piston" },
]);

it("similarity is twice the depth of what both are, over the sum of their depths", () => {
  expect(taxonomySimilarity(taxonomy, "spring", "spring")).toBe(1);
  expect(taxonomySimilarity(taxonomy, "piston", "casing")).toBe(2 / 4);
  expect(taxonomySimilarity(taxonomy, "spring", "casing")).toBe(2 / 5);
  expect(taxonomySimilarity(taxonomy, "spring", "piston")).toBe(4 / 5);
  expect(taxonomySimilarity(taxonomy, "piston", "spring")).toBe(4 / 5);
});
