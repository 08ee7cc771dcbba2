import { describe, expect, it } from "vitest";
import { nearestWord } from "@/lib/document/nearestWord";

describe("the word that was probably meant", () => {
  it("is the known word with the fewest slips", () => {
    expect(nearestWord("trumpt", ["tuba", "trumpet", "trombone"])).toBe("trumpet");
    expect(nearestWord("gumed-oil", ["oil", "gummed-oil", "mixed-oils"])).toBe("gummed-oil");
  });

  it("is found whatever the case of its letters, and comes back as it is known", () => {
    expect(nearestWord("CORNET", ["Cornet"])).toBe("Cornet");
  });

  it("is the first of several that lie as near", () => {
    expect(nearestWord("bat", ["cat", "hat"])).toBe("cat");
    expect(nearestWord("bat", ["hat", "cat"])).toBe("hat");
  });

  it("may lie a third of the word's length away and no further", () => {
    expect(nearestWord("abcdef", ["abcdxy"])).toBe("abcdxy");
    expect(nearestWord("abcdef", ["abcxyz"])).toBeUndefined();
    expect(nearestWord("abcde", ["abcxy"])).toBeUndefined();
  });

  it("may lie one slip away in a short word", () => {
    expect(nearestWord("v", ["w"])).toBe("w");
    expect(nearestWord("ab", ["xy"])).toBeUndefined();
  });

  it("is none where nothing is known", () => {
    expect(nearestWord("valve", [])).toBeUndefined();
  });
});
