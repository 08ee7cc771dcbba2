import { describe, expect, it } from "vitest";
import { buildTaxonomy, IMPLICIT_ROOT } from "@/lib/similarity/taxonomy";

const tree = buildTaxonomy([
  { id: "spring", parent: "piston" },
  { id: "valve" },
  { id: "piston", parent: "valve" },
  { id: "casing", parent: "valve" },
]);

describe("buildTaxonomy", () => {
  it("counts depth in nodes from the root, which has 1", () => {
    expect(["valve", "piston", "spring"].map(tree.depth)).toEqual([1, 2, 3]);
  });

  it("lists ancestors nearest first and keeps the order of the ids given", () => {
    expect(tree.ancestors("spring")).toEqual(["piston", "valve"]);
    expect(tree.ancestors("valve")).toEqual([]);
    expect(tree.ids).toEqual(["spring", "valve", "piston", "casing"]);
  });

  it("knows what stands under what, itself included", () => {
    expect(tree.isA("spring", "valve")).toBe(true);
    expect(tree.isA("spring", "spring")).toBe(true);
    expect(tree.isA("spring", "casing")).toBe(false);
    expect(tree.isA("valve", "spring")).toBe(false);
  });

  it("finds the deepest id over both, which may be one of the two", () => {
    expect(tree.lowestCommonAncestor("spring", "casing")).toBe("valve");
    expect(tree.lowestCommonAncestor("spring", "piston")).toBe("piston");
    expect(tree.lowestCommonAncestor("spring", "spring")).toBe("spring");
  });

  it("puts several roots under one at depth 1", () => {
    const forest = buildTaxonomy([{ id: "brass" }, { id: "woodwind" }, { id: "flute", parent: "woodwind" }]);
    expect(forest.depth("brass")).toBe(2);
    expect(forest.lowestCommonAncestor("brass", "flute")).toBe(IMPLICIT_ROOT);
    expect(forest.depth(IMPLICIT_ROOT)).toBe(1);
    expect(forest.ids).not.toContain(IMPLICIT_ROOT);
  });

  it("refuses what is no tree and says which id is at fault", () => {
    expect(() => buildTaxonomy([])).toThrow("got none");
    expect(() => buildTaxonomy([{ id: "a" }, { id: "a" }])).toThrow('"a" twice');
    expect(() => buildTaxonomy([{ id: "a", parent: "b" }])).toThrow(
      'the parent of "a" must be a node; got "b"',
    );
    expect(() => buildTaxonomy([{ id: "root" }, { id: "a", parent: "b" }, { id: "b", parent: "a" }])).toThrow(
      "a under b under a",
    );
    expect(() => buildTaxonomy([{ id: "a", parent: "a" }])).toThrow("a under a");
    expect(() => buildTaxonomy([{ id: IMPLICIT_ROOT }, { id: "a" }])).toThrow("rename it");
    expect(() => tree.depth("slide")).toThrow('got "slide"');
  });
});
