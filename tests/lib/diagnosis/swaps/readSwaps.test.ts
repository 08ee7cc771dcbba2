import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSwaps } from "../../../../lib/diagnosis/swaps/readSwaps";
import type { SwapObservation, SwapResult } from "../../../../lib/diagnosis/swaps/swapObservation";

const swap = (piston: number, casing: number, result: SwapResult, where?: string): SwapObservation => ({
  a: `piston ${piston}`,
  b: `casing ${casing}`,
  result,
  ...(where === undefined ? {} : { where }),
});
const standings = (observations: readonly SwapObservation[]) =>
  Object.fromEntries(readSwaps(observations).suspects.map(({ part, standing }) => [part, standing]));

const numbers = fc.integer({ min: 1, max: 3 });
const results = fc.constantFrom<SwapResult>("free", "drags", "sticks");
const anySwaps = fc.array(
  fc.tuple(numbers, numbers, results).map(([piston, casing, result]) => swap(piston, casing, result)),
  { maxLength: 10 },
);

describe("readSwaps", () => {
  it("suspects both of a pair that sticks when nothing else was tried", () => {
    const read = readSwaps([swap(2, 2, "sticks")]);
    expect(read.conflicts).toEqual([["piston 2", "casing 2"]]);
    expect(read.diagnoses).toEqual([["casing 2"], ["piston 2"]]);
    expect(standings([swap(2, 2, "sticks")])).toEqual({ "piston 2": "suspect", "casing 2": "suspect" });
    expect(read.nextSwap).toBeUndefined();
  });

  it("turns to the casing when its piston runs free elsewhere", () => {
    const seen = [swap(2, 2, "sticks"), swap(2, 1, "free")];
    expect(readSwaps(seen).diagnoses[0]).toEqual(["casing 2"]);
    expect(standings(seen)).toEqual({ "piston 2": "cleared", "casing 2": "suspect", "casing 1": "cleared" });
  });

  it("turns to the casing when it stops a second piston, which stays possible while it never ran free", () => {
    const seen = [swap(2, 2, "sticks"), swap(1, 2, "drags"), swap(2, 1, "free")];
    const read = readSwaps(seen);
    expect(read.diagnoses).toEqual([["casing 2"], ["piston 1", "piston 2"]]);
    expect(standings(seen)).toEqual({
      "piston 2": "cleared",
      "casing 2": "suspect",
      "piston 1": "possible",
      "casing 1": "cleared",
    });
    expect(read.suspects.find(({ part }) => part === "casing 2")).toEqual({
      part: "casing 2",
      standing: "suspect",
      freeIn: [],
      stuckIn: ["piston 2", "piston 1"],
      stuckAt: [],
      constant: [],
    });
  });

  it("holds a pair unsuited when each of the two runs free with another partner", () => {
    const seen = [swap(2, 2, "sticks"), swap(2, 1, "free"), swap(1, 2, "free")];
    expect(readSwaps(seen).unsuited).toEqual([["piston 2", "casing 2"]]);
    expect(standings(seen)).toMatchObject({ "piston 2": "possible", "casing 2": "possible" });
  });

  it("keeps suspecting a piston that binds in two casings, though it runs free in a third, when both casings are sound", () => {
    const seen = [
      swap(1, 1, "sticks"),
      swap(1, 2, "sticks"),
      swap(1, 3, "free"),
      swap(2, 1, "free"),
      swap(2, 2, "free"),
    ];
    expect(standings(seen)).toMatchObject({
      "piston 1": "suspect",
      "casing 1": "cleared",
      "casing 2": "cleared",
    });
    expect(readSwaps(seen).unsuited).toEqual([]);
  });

  it("clears everything when all ran free", () => {
    const read = readSwaps([swap(1, 1, "free"), swap(2, 2, "free")]);
    expect(read.diagnoses).toEqual([[]]);
    expect(read.suspects.every(({ standing }) => standing === "cleared")).toBe(true);
    expect(read.nextSwap).toBeUndefined();
  });

  it("has nothing to say about nothing", () => {
    expect(readSwaps([])).toEqual({
      conflicts: [],
      diagnoses: [[]],
      suspects: [],
      unsuited: [],
      contradictions: [],
    });
  });

  it("names a pair that was free and stuck, keeps it as a conflict, and lets its free run clear nobody", () => {
    const read = readSwaps([swap(2, 2, "sticks"), swap(2, 2, "free")]);
    expect(read.contradictions).toEqual([{ a: "piston 2", b: "casing 2", results: ["sticks", "free"] }]);
    expect(read.conflicts).toEqual([["piston 2", "casing 2"]]);
    expect(read.suspects.map(({ freeIn }) => freeIn)).toEqual([[], []]);
  });

  it("does not call it a contradiction when a pair is free at one place and binds at another", () => {
    expect(readSwaps([swap(2, 2, "sticks", "bottom"), swap(2, 2, "free", "top")]).contradictions).toEqual([]);
    expect(
      readSwaps([swap(2, 2, "sticks", "bottom"), swap(2, 2, "free", "Bottom")]).contradictions,
    ).toHaveLength(1);
    expect(readSwaps([swap(2, 2, "sticks", "bottom"), swap(2, 2, "free")]).contradictions).toHaveLength(1);
  });

  it("does not call dragging and sticking a contradiction", () => {
    expect(readSwaps([swap(2, 2, "sticks"), swap(2, 2, "drags")]).contradictions).toEqual([]);
  });

  it("lists the places at which a part bound, over all its partners", () => {
    const read = readSwaps([swap(1, 2, "sticks", "Bottom"), swap(2, 2, "sticks", "top")]);
    expect(read.suspects.map(({ part, stuckAt }) => [part, stuckAt])).toEqual([
      ["piston 1", ["bottom"]],
      ["casing 2", ["bottom", "top"]],
      ["piston 2", ["top"]],
    ]);
  });

  it("counts a place that moves with the partner against blaming the one part they share", () => {
    // By weight: casing 2 alone .01 x .1 x .1 = 1e-4 for its two free runs, as much as two pistons at fault; moving takes .3 of that.
    const twoFree = [swap(3, 2, "free"), swap(4, 2, "free")];
    const samePlace = [swap(1, 2, "sticks", "bottom"), swap(2, 2, "sticks", "bottom"), ...twoFree];
    const moving = [swap(1, 2, "sticks", "bottom"), swap(2, 2, "sticks", "top"), ...twoFree];
    expect(readSwaps(samePlace).diagnoses[0]).toEqual(["casing 2"]);
    expect(readSwaps(moving).diagnoses[0]).toEqual(["piston 1", "piston 2"]);
    expect(standings(samePlace)).toMatchObject({
      "casing 2": "possible",
      "piston 1": "suspect",
      "piston 2": "suspect",
    });
  });

  it("proposes the swap that settles the case, of parts that have been seen", () => {
    // Piston 2 and casing 2 are equally suspect; the sound piston 1 in casing 2 tells as much as piston 2 in casing 1.
    const read = readSwaps([swap(2, 2, "sticks"), swap(1, 1, "free")]);
    expect(read.nextSwap).toMatchObject({ a: "piston 2", b: "casing 1" });
    expect(read.nextSwap?.gainBits).toBeGreaterThan(0.5);
    expect(read.nextSwap?.gainBits).toBeLessThanOrEqual(1);
  });

  it("proposes parts at hand besides, where it was told of them", () => {
    const read = readSwaps([swap(2, 2, "sticks")], { atHand: ["Piston 3", "bell"] });
    expect(read.nextSwap).toMatchObject({ a: "piston 3", b: "casing 2" });
  });

  it("serves parts of any kind, the two members of a pair even of one kind", () => {
    const read = readSwaps([
      { a: "leg 1", b: "leg 2", result: "drags" },
      { a: "leg 3", b: "leg 4", result: "free" },
    ]);
    expect(read.nextSwap).toMatchObject({ a: "leg 1", b: "leg 3" });
  });

  it("takes a pair for the same whichever way round and however spelled", () => {
    const read = readSwaps([swap(2, 2, "sticks"), { a: "Casing  2", b: " piston 2", result: "sticks" }]);
    expect(read.conflicts).toEqual([["piston 2", "casing 2"]]);
  });

  it("answers quickly whatever it is given, and owns up when too many parts would have to be at fault", () => {
    const pairs = Array.from({ length: 60 }, (_, index) => swap(index, index, "sticks"));
    expect(readSwaps(pairs).diagnoses).toEqual([]);
  });

  it("refuses a part tried with itself", () => {
    expect(() => readSwaps([{ a: "piston 1", b: "Piston 1", result: "free" }])).toThrow(
      "two different parts",
    );
  });

  it("never blames one part alone for what it did not take part in, nor for a pair that ran free", () => {
    fc.assert(
      fc.property(anySwaps, (observations) => {
        const read = readSwaps(observations);
        for (const [part, ...more] of read.diagnoses) {
          if (part === undefined || more.length > 0) continue;
          expect(read.conflicts.every((pair) => pair.includes(part))).toBe(true);
          const freeIn = read.suspects.find((suspect) => suspect.part === part)?.freeIn ?? [];
          expect(read.conflicts.some((pair) => pair.some((other) => freeIn.includes(other)))).toBe(false);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("ranks a single part that ran free elsewhere after every single part that never did", () => {
    fc.assert(
      fc.property(anySwaps, (observations) => {
        const read = readSwaps(observations);
        const ranFree = read.diagnoses
          .filter((diagnosis) => diagnosis.length === 1)
          .map(([part]) => (read.suspects.find((suspect) => suspect.part === part)?.freeIn.length ?? 0) > 0);
        expect(ranFree).toEqual([...ranFree].sort());
      }),
      { numRuns: 500 },
    );
  });

  it("does not care in which order the swaps were tried", () => {
    fc.assert(
      fc.property(anySwaps, (observations) => {
        const forward = readSwaps(observations);
        const backward = readSwaps([...observations].reverse());
        expect(backward.diagnoses).toEqual(forward.diagnoses);
        const byPart = (read: typeof forward) =>
          Object.fromEntries(read.suspects.map(({ part, standing }) => [part, standing]));
        expect(byPart(backward)).toEqual(byPart(forward));
      }),
    );
  });

  it("never proposes a pair already tried, nor two parts of a kind that was never paired", () => {
    fc.assert(
      fc.property(anySwaps, (observations) => {
        const { nextSwap } = readSwaps(observations);
        if (nextSwap === undefined) return;
        expect([nextSwap.a, nextSwap.b]).toEqual([
          expect.stringMatching(/^piston/),
          expect.stringMatching(/^casing/),
        ]);
        expect(observations.some(({ a, b }) => a === nextSwap.a && b === nextSwap.b)).toBe(false);
      }),
    );
  });

  it("finds the one bad part once every pair has been tried, and never clears it before", () => {
    const pairs = [1, 2, 3].flatMap((piston) => [1, 2, 3].map((casing) => [piston, casing] as const));
    const bad = fc.constantFrom("piston 1", "piston 2", "piston 3", "casing 1", "casing 2", "casing 3");
    fc.assert(
      fc.property(bad, fc.shuffledSubarray(pairs, { minLength: 1 }), (badPart, tried) => {
        const observations = tried.map(([piston, casing]) =>
          swap(
            piston,
            casing,
            [`piston ${piston}`, `casing ${casing}`].includes(badPart) ? "sticks" : "free",
          ),
        );
        const { diagnoses } = readSwaps(observations);
        expect(standings(observations)[badPart]).not.toBe("cleared");
        if (tried.length === pairs.length) expect(diagnoses[0]).toEqual([badPart]);
      }),
      { numRuns: 300 },
    );
  });
});
