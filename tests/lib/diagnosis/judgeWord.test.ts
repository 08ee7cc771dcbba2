import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frequencyRange, frequencyWords, wordFor } from "@/lib/diagnosis/frequencyRange";
import { frequencyOf } from "@/lib/diagnosis/frequencyWords";
import { judgeWord, leastCases } from "@/lib/diagnosis/judgeWord";

describe("the range of a word", () => {
  it("reaches half way to the next word on either side", () => {
    // (.97 + .8) / 2, (.8 + .6) / 2, (.6 + .3) / 2, (.3 + .08) / 2, (.08 + .02) / 2
    const lows = [0.885, 0.7, 0.45, 0.19, 0.05, 0];
    for (const [at, word] of frequencyWords.entries()) {
      expect(frequencyRange(word).low).toBeCloseTo(lows[at] ?? Number.NaN, 12);
      expect(frequencyRange(word).high).toBeCloseTo(at === 0 ? 1 : (lows[at - 1] ?? Number.NaN), 12);
    }
  });

  it("holds its own number, and each share lies in the range of one word", () => {
    for (const word of frequencyWords) expect(wordFor(frequencyOf[word])).toBe(word);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const holding = frequencyWords.filter((word) => {
          const { low, high } = frequencyRange(word);
          return low <= share && (share < high || high === 1);
        });
        expect(holding).toEqual([wordFor(share)]);
      }),
    );
  });
});

describe("what cases say about a word", () => {
  // Source of the bounds: SciPy 1.17, scipy.stats.beta(k + 0.5, n - k + 0.5).ppf([0.005, 0.995]).
  it("is off where the interval of the share lies wholly beyond its range", () => {
    // 1 of 12: .003 to .421; always begins at .885.
    expect(judgeWord("always", 1, 12)).toEqual({ kind: "off", proposed: "rarely" });
    // 12 of 12: .725 to 1; sometimes ends at .45.
    expect(judgeWord("sometimes", 12, 12)).toEqual({ kind: "off", proposed: "always" });
  });

  it("fits where the two meet", () => {
    // 3 of 14: .038 to .552; usually begins at .7, often at .45, sometimes reaches from .19 to .45.
    expect(judgeWord("usually", 3, 14).kind).toBe("off");
    expect(judgeWord("often", 3, 14)).toEqual({ kind: "fits" });
    expect(judgeWord("sometimes", 3, 14)).toEqual({ kind: "fits" });
  });

  it("is nothing where there are few cases", () => {
    expect(judgeWord("never", 4, leastCases - 1)).toEqual({ kind: "few" });
    expect(judgeWord("never", 5, leastCases).kind).toBe("off");
  });

  it("never proposes the word itself", () => {
    const counts = fc.nat(60).chain((looked) => fc.tuple(fc.nat(looked), fc.constant(looked)));
    fc.assert(
      fc.property(fc.constantFrom(...frequencyWords), counts, (word, [seen, looked]) => {
        const verdict = judgeWord(word, seen, looked);
        if (verdict.kind === "off") expect(verdict.proposed).not.toBe(word);
      }),
    );
  });

  it("takes a word whose number is the true share for off less than four times in a thousand", () => {
    // Summed exactly over the binomial. Source: SciPy 1.17, binom and beta, gives .00367 at most (often, 11 cases).
    const chance = (k: number, n: number, p: number) => {
      let ways = 1;
      for (let at = 1; at <= k; at += 1) ways *= (n - k + at) / at;
      return ways * p ** k * (1 - p) ** (n - k);
    };
    let worst = 0;
    for (const word of frequencyWords)
      for (let looked = leastCases; looked <= 40; looked += 1) {
        let wrong = 0;
        for (let seen = 0; seen <= looked; seen += 1)
          if (judgeWord(word, seen, looked).kind === "off") wrong += chance(seen, looked, frequencyOf[word]);
        worst = Math.max(worst, wrong);
      }
    expect(worst).toBeCloseTo(0.00367, 5);
    // The share at the upper edge of usually, by the same SciPy.
    let atEdge = 0;
    for (let seen = 0; seen <= 32; seen += 1)
      if (judgeWord("usually", seen, 32).kind === "off") atEdge += chance(seen, 32, 0.885);
    expect(atEdge).toBeCloseTo(0.02005, 5);
  });
});
