import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { minimalHittingSets } from "../../../../lib/diagnosis/swaps/minimalHittingSets";

const letters = ["a", "b", "c", "d", "e", "f"];
const conflictSets = fc.array(fc.subarray(letters, { minLength: 1 }), { maxLength: 6 });

/** Every subset of the letters that meets each conflict and has no proper subset which does. */
function byBruteForce(conflicts: readonly (readonly string[])[]): string[][] {
  const subsets = Array.from({ length: 2 ** letters.length }, (_, mask) =>
    letters.filter((_letter, bit) => (mask >> bit) & 1),
  );
  const hitting = subsets.filter((set) =>
    conflicts.every((conflict) => conflict.some((part) => set.includes(part))),
  );
  return hitting.filter(
    (set) => !hitting.some((other) => other.length < set.length && other.every((part) => set.includes(part))),
  );
}

const asKeys = (sets: readonly (readonly string[])[]) => sets.map((set) => set.join()).sort();

describe("minimalHittingSets", () => {
  it("agrees with trying every subset", () => {
    fc.assert(
      fc.property(conflictSets, (conflicts) => {
        expect(asKeys(minimalHittingSets(conflicts))).toEqual(asKeys(byBruteForce(conflicts)));
      }),
      { numRuns: 500 },
    );
  });

  it("finds sets that are minimal: without any one part some conflict is missed", () => {
    fc.assert(
      fc.property(conflictSets, (conflicts) => {
        for (const set of minimalHittingSets(conflicts))
          for (const left of set)
            expect(
              conflicts.some((conflict) => !conflict.some((part) => part !== left && set.includes(part))),
            ).toBe(true);
      }),
    );
  });

  it("does not care about the order of the conflicts or of their members", () => {
    fc.assert(
      fc.property(conflictSets, (conflicts) => {
        const turned = conflicts.map((conflict) => [...conflict].reverse()).reverse();
        expect(minimalHittingSets(turned)).toEqual(minimalHittingSets(conflicts));
      }),
    );
  });

  it("with a limit gives just those of the answers that are small enough", () => {
    fc.assert(
      fc.property(conflictSets, fc.nat(4), (conflicts, maxSize) => {
        expect(minimalHittingSets(conflicts, { maxSize })).toEqual(
          minimalHittingSets(conflicts).filter((set) => set.length <= maxSize),
        );
      }),
    );
  });

  it("blames nothing without conflicts, and cannot explain an empty one", () => {
    expect(minimalHittingSets([])).toEqual([[]]);
    expect(minimalHittingSets([["a"], []])).toEqual([]);
  });

  it("puts smaller sets first, then by their members", () => {
    expect(
      minimalHittingSets([
        ["b", "a"],
        ["c", "b"],
      ]),
    ).toEqual([["b"], ["a", "c"]]);
  });

  it("refuses a limit that is none", () => {
    expect(() => minimalHittingSets([], { maxSize: -1 })).toThrow("maxSize must be 0 or more; got -1");
  });
});
