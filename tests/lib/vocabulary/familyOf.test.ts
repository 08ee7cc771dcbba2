import { describe, expect, it } from "vitest";
import { openBench } from "@/lib/consult/bench/openBench";
import { familyOf } from "@/lib/vocabulary/familyOf";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { smallVocabulary } from "../reading/smallVocabulary";

const { vocabulary: trade } = openBench({}).bench;

describe("familyOf", () => {
  it("is the ancestor two steps below the root", () => {
    expect(familyOf(trade, "piccolo-trumpet")).toBe("piston-brass");
    expect(familyOf(trade, "bass-trombone")).toBe("slide-brass");
    expect(familyOf(trade, "alto-saxophone")).toBe("saxophone");
    expect(familyOf(trade, "clarinet")).toBe("clarinet");
  });

  it("is the parent of an instrument that stands there by itself, and what stands higher is its own", () => {
    expect(familyOf(trade, "bugle")).toBe("brass");
    expect(familyOf(trade, "brass")).toBe("brass");
    expect(familyOf(smallVocabulary, "trumpet")).toBe("trumpet");
  });
});

describe("listFamilies", () => {
  it("names each family once, in the order of the tree, without what lies outside", () => {
    const families = listFamilies(trade).map(({ id }) => id);
    expect(new Set(families).size).toBe(families.length);
    expect(families.slice(0, 3)).toEqual(["brass", "piston-brass", "rotary-brass"]);
    expect(families).toContain("double-reed");
    expect(families).not.toContain("violin");
  });
});
