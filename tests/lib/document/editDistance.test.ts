import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance } from "@/lib/document/editDistance";

/** Few letters, so that slips, swaps and equal words all come up often. */
const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 7 });

/** The same distance straight from its recurrence, without rows or limits. */
function plainDistance(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  const [restA, restB] = [a.slice(0, -1), b.slice(0, -1)];
  const ways = [
    plainDistance(restA, b) + 1,
    plainDistance(a, restB) + 1,
    plainDistance(restA, restB) + (a.at(-1) === b.at(-1) ? 0 : 1),
  ];
  if (a.length > 1 && b.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1)) {
    ways.push(plainDistance(a.slice(0, -2), b.slice(0, -2)) + 1);
  }
  return Math.min(...ways);
}

describe("the edit distance", () => {
  it.each([
    ["valve", "valve", 0],
    ["vlave", "valve", 1],
    ["valv", "valve", 1],
    ["valves", "valve", 1],
    ["walve", "valve", 1],
    ["stikcs", "sticks", 1],
    ["kitten", "sitting", 3],
    ["", "bore", 4],
    ["ca", "abc", 3],
  ])("from '%s' to '%s' is %d", (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });

  it("is that of the plain recurrence", () => {
    const short = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 5 });
    fc.assert(
      fc.property(short, short, (a, b) => {
        expect(editDistance(a, b)).toBe(plainDistance(a, b));
      }),
    );
  });

  it("is the same both ways", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
      }),
    );
  });

  it("is 0 for equal words and for no others", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(editDistance(a, b) === 0).toBe(a === b);
        expect(editDistance(a, a)).toBe(0);
      }),
    );
  });

  it("is told exactly up to the limit, and as limit + 1 beyond it", () => {
    fc.assert(
      fc.property(word, word, fc.nat({ max: 7 }), (a, b, limit) => {
        expect(editDistance(a, b, limit)).toBe(Math.min(editDistance(a, b), limit + 1));
      }),
    );
  });
});
