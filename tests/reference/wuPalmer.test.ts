import { describe, expect, it } from "vitest";
import { taxonomySimilarity } from "@/lib/similarity/measures/taxonomySimilarity";
import { buildTaxonomy, type TaxonomyNode } from "@/lib/similarity/taxonomy";

/** A chain of ids, each under the one before; the first stands under `parent`. */
function chain(parent: string | undefined, ids: string): TaxonomyNode[] {
  return ids.split(" ").map((id, i, all) => ({ id, parent: i === 0 ? parent : all[i - 1] }));
}

describe("Wu & Palmer 1994, 2 N3 / (N1 + N2 + 2 N3) counted in nodes", () => {
  // Root at depth 1: the values change with the root's depth. Recomputed by hand from the paper's formula.
  const taxonomy = buildTaxonomy([
    ...chain(undefined, "thing instrument brass trumpet piccolo-trumpet"),
    { id: "horn", parent: "brass" },
    ...chain("instrument", "woodwind clarinet bass-clarinet"),
  ]);

  it("siblings under a parent at depth 3 are alike by 3/4", () => {
    expect(taxonomySimilarity(taxonomy, "trumpet", "horn")).toBe(3 / 4);
  });

  it("a grandchild and its aunt are alike by 2/3", () => {
    expect(taxonomySimilarity(taxonomy, "piccolo-trumpet", "horn")).toBe(2 / 3);
  });

  it("across families it is 1/2 one level under them, 2/5 at the deepest", () => {
    expect(taxonomySimilarity(taxonomy, "trumpet", "clarinet")).toBe(1 / 2);
    expect(taxonomySimilarity(taxonomy, "piccolo-trumpet", "bass-clarinet")).toBe(2 / 5);
  });
});

describe("Wu & Palmer similarity on WordNet", () => {
  // Source: the WordNet how-to of NLTK, dog.n.01 against cat.n.01: 0.857... The chain of hypernyms in WordNet 3.0 is from memory.
  const taxonomy = buildTaxonomy([
    ...chain(
      undefined,
      "entity physical-entity object whole living-thing organism animal chordate vertebrate mammal placental carnivore canine dog",
    ),
    ...chain("carnivore", "feline cat"),
  ]);

  it("dog and cat are alike by 24/28", () => {
    expect(taxonomySimilarity(taxonomy, "dog", "cat")).toBeCloseTo(0.8571428571428571, 15);
  });
});
