import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readSwaps } from "@/lib/diagnosis/swaps/readSwaps";
import type { SwapObservation, SwapResult } from "@/lib/diagnosis/swaps/swapObservation";

const swap = (piston: number, casing: number, result: SwapResult, where?: string): SwapObservation => ({
  a: `piston ${piston}`,
  b: `casing ${casing}`,
  result,
  ...(where === undefined ? {} : { where }),
});
const standings = (observations: readonly SwapObservation[]) =>
  Object.fromEntries(readSwaps(observations).suspects.map(({ part, standing }) => [part, standing]));
const pairs = [1, 2, 3].flatMap((piston) => [1, 2, 3].map((casing) => [piston, casing] as const));
/** What every pair does when these parts are at fault. */
const honest = (faulty: readonly string[], tried: readonly (readonly [number, number])[]) =>
  tried.map(([piston, casing]) =>
    swap(
      piston,
      casing,
      faulty.includes(`piston ${piston}`) || faulty.includes(`casing ${casing}`) ? "sticks" : "free",
    ),
  );

describe("parts that a swap exonerates", () => {
  it("are all sound parts, once the one bad part has been tried with every partner and they with each other", () => {
    for (const bad of ["piston 1", "piston 2", "piston 3", "casing 1", "casing 2", "casing 3"]) {
      const found = standings(honest([bad], pairs));
      expect(Object.keys(found).filter((part) => found[part] !== "cleared")).toEqual([bad]);
    }
  });

  it("are never cleared without having run free", () => {
    const results = fc.constantFrom<SwapResult>("free", "drags", "sticks");
    const anySwaps = fc.array(
      fc
        .tuple(fc.constantFrom(...pairs), results)
        .map(([[piston, casing], result]) => swap(piston, casing, result)),
      { maxLength: 10 },
    );
    fc.assert(
      fc.property(anySwaps, (observations) => {
        for (const { standing, freeIn } of readSwaps(observations).suspects)
          if (standing === "cleared") expect(freeIn.length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});

describe("the place in the stroke", () => {
  // Piston 2 and casing 2 stick with each other and each with a partner of number 1: either may be the bad one.
  const stuck = (own: string, otherPiston: string, otherCasing: string) => [
    swap(2, 2, "sticks", own),
    swap(1, 2, "sticks", otherPiston),
    swap(2, 1, "sticks", otherCasing),
  ];

  it("speaks for the casing when it stays the same whichever piston is in it and moves with the piston's casing", () => {
    const { diagnoses } = readSwaps(stuck("bottom", "bottom", "top"));
    expect(diagnoses.at(-1)).toEqual(["piston 1", "piston 2"]);
    expect(standings(stuck("bottom", "bottom", "top"))).toMatchObject({
      "casing 2": "suspect",
      "piston 1": "possible",
    });
  });

  it("speaks for the piston when it stays the same whichever casing it is in and moves with the casing's piston", () => {
    const { diagnoses } = readSwaps(stuck("bottom", "top", "bottom"));
    expect(diagnoses.at(-1)).toEqual(["casing 1", "casing 2"]);
    expect(standings(stuck("bottom", "top", "bottom"))).toMatchObject({
      "piston 2": "suspect",
      "casing 1": "possible",
    });
  });

  it("says nothing when it is the same everywhere, or was not told", () => {
    const untold = [swap(2, 2, "sticks"), swap(1, 2, "sticks"), swap(2, 1, "sticks")];
    expect(standings(stuck("bottom", "bottom", "bottom"))).toEqual(standings(untold));
    expect(new Set(Object.values(standings(untold)))).toEqual(new Set(["suspect"]));
  });

  it("treats pistons and casings alike: with the two changed about, so is the blame", () => {
    const places = fc.constantFrom(undefined, "top", "halfway", "bottom");
    const results = fc.constantFrom<SwapResult>("free", "drags", "sticks");
    const seen = fc.array(fc.tuple(fc.constantFrom(...pairs), results, places), { maxLength: 9 });
    const mirrored = (part: string) =>
      part.startsWith("piston") ? part.replace("piston", "casing") : part.replace("casing", "piston");
    fc.assert(
      fc.property(seen, (tried) => {
        const plain = standings(
          tried.map(([[one, other], result, where]) => swap(one, other, result, where)),
        );
        const changed = standings(
          tried.map(([[one, other], result, where]) => swap(other, one, result, where)),
        );
        expect(
          Object.fromEntries(Object.entries(changed).map(([part, standing]) => [mirrored(part), standing])),
        ).toEqual(plain);
      }),
      { numRuns: 300 },
    );
  });
});

describe.each(["where", "way", "turned"] as const)("a result that depends on %s", (aspect) => {
  const seen = (piston: number, casing: number, value?: string): SwapObservation => ({
    ...swap(piston, casing, "sticks"),
    ...(value === undefined ? {} : { [aspect]: value }),
  });
  const constantOf = (observations: readonly SwapObservation[]) =>
    readSwaps(observations)
      .suspects.filter(({ constant }) => constant.includes(aspect))
      .map(({ part }) => part);

  it("accuses the casing where it is the same whichever piston is in it", () => {
    const tried = [seen(2, 2, "one"), seen(1, 2, "one"), seen(2, 1, "other")];
    expect(readSwaps(tried).diagnoses.at(-1)).toEqual(["piston 1", "piston 2"]);
    expect(standings(tried)).toMatchObject({ "casing 2": "suspect", "piston 1": "possible" });
    expect(constantOf(tried)).toEqual(["casing 2"]);
  });

  it("accuses the piston where it is the same whichever casing it is in", () => {
    const tried = [seen(2, 2, "one"), seen(1, 2, "other"), seen(2, 1, "one")];
    expect(readSwaps(tried).diagnoses.at(-1)).toEqual(["casing 1", "casing 2"]);
    expect(standings(tried)).toMatchObject({ "piston 2": "suspect", "casing 1": "possible" });
    expect(constantOf(tried)).toEqual(["piston 2"]);
  });

  it("accuses neither where it is the same everywhere or was not told", () => {
    const same = [seen(2, 2, "one"), seen(1, 2, "one"), seen(2, 1, "one")];
    const untold = [seen(2, 2), seen(1, 2), seen(2, 1)];
    expect(standings(same)).toEqual(standings(untold));
    expect(constantOf(same)).toEqual([]);
    expect(constantOf(untold)).toEqual([]);
  });

  it("is no contradiction where the pair was free otherwise, and is one where it was free in the same", () => {
    const free = (value: string) => ({ ...swap(2, 2, "free"), [aspect]: value });
    expect(readSwaps([seen(2, 2, "one"), free("other")]).contradictions).toEqual([]);
    expect(readSwaps([seen(2, 2, "one"), free("One")]).contradictions).toHaveLength(1);
  });
});

describe("a piston that was turned in its casing", () => {
  it("was not turned where no turn is told: free as it was and bound when turned do not contradict each other", () => {
    const turned = { ...swap(2, 2, "sticks"), turned: "half" };
    expect(readSwaps([swap(2, 2, "free"), turned]).contradictions).toEqual([]);
    expect(readSwaps([swap(2, 2, "free"), swap(2, 2, "sticks")]).contradictions).toHaveLength(1);
  });
});

describe("the one swap that would settle it", () => {
  const before = [swap(2, 2, "sticks"), swap(1, 1, "free"), swap(3, 3, "free")];

  it("tells the two members of a sticking pair apart by a sound partner, whatever comes of it", () => {
    const { nextSwap } = readSwaps(before);
    expect(nextSwap).toMatchObject({ a: "piston 2", b: "casing 1" });
    expect(standings([...before, swap(2, 1, "free")])).toMatchObject({
      "casing 2": "suspect",
      "piston 2": "cleared",
    });
    expect(readSwaps([...before, swap(2, 1, "sticks")]).diagnoses[0]).toEqual(["piston 2"]);
  });

  it("finds one bad part in at most two further swaps, whichever it is", () => {
    for (const bad of ["piston 2", "casing 2"]) {
      const observations = [...before];
      for (let further = 0; further < 2; further += 1) {
        const { nextSwap } = readSwaps(observations);
        if (!nextSwap) break;
        const [piston, casing] = [nextSwap.a, nextSwap.b].map((part) => Number(part.at(-1)));
        observations.push(...honest([bad], [[piston ?? 0, casing ?? 0]]));
      }
      const found = readSwaps(observations);
      expect(found.diagnoses[0]).toEqual([bad]);
      expect(found.nextSwap?.gainBits ?? 0).toBeLessThan(readSwaps(before).nextSwap?.gainBits ?? 0);
    }
  });

  it("is not proposed when all ran free", () => {
    expect(readSwaps(honest([], pairs.slice(0, 4))).nextSwap).toBeUndefined();
  });
});

describe("contradictions", () => {
  it("name every pair that was free and was not at the same place, and no other, with what was seen of it", () => {
    const results = fc.constantFrom<SwapResult>("free", "drags", "sticks");
    const seen = fc.array(fc.tuple(fc.constantFrom(...pairs), results), { maxLength: 12 });
    fc.assert(
      fc.property(seen, (tried) => {
        const { contradictions } = readSwaps(
          tried.map(([[piston, casing], result]) => swap(piston, casing, result)),
        );
        const expected = pairs.filter((pair) => {
          const own = tried.filter(([other]) => other === pair).map(([, result]) => result);
          return own.includes("free") && own.some((result) => result !== "free");
        });
        expect(contradictions.map(({ a, b }) => `${a} ${b}`).sort()).toEqual(
          expected.map(([piston, casing]) => `piston ${piston} casing ${casing}`).sort(),
        );
        for (const { results: named } of contradictions) expect(named).toContain("free");
      }),
      { numRuns: 300 },
    );
  });
});
