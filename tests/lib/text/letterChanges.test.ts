import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { letterChanges } from "@/lib/text/letterChanges";

/** The definition itself: change, miss or add the first letter, then go on. */
function plainChanges(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  return Math.min(
    plainChanges(a.slice(1), b.slice(1)) + (a[0] === b[0] ? 0 : 1),
    plainChanges(a.slice(1), b) + 1,
    plainChanges(a, b.slice(1)) + 1,
  );
}

describe("letters to change from one word to another", () => {
  it.each([
    ["vlave", "valve", 2],
    ["cork", "fork", 1],
    ["cork", "cork", 0],
    ["pad", "pads", 1],
    ["", "ab", 2],
  ])("of '%s' and '%s' are %d", (a, b, changes) => {
    expect(letterChanges(a, b, 2)).toBe(changes);
  });

  it("are as many as by the definition, up to one more than the limit", () => {
    const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 6 });
    fc.assert(
      fc.property(word, word, fc.nat({ max: 3 }), (a, b, limit) => {
        expect(letterChanges(a, b, limit)).toBe(Math.min(plainChanges(a, b), limit + 1));
      }),
    );
  });
});
