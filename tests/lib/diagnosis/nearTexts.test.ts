import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { NearTexts, type ToldText } from "@/lib/diagnosis/nearTexts";

const topics = ["dent", "lime", "wear"];
const terms = fc.uniqueArray(fc.constantFrom("ball", "chalk", "ding", "kettle", "thin", "wall", "white"), {
  minLength: 1,
  maxLength: 5,
});
const texts = fc.array(
  fc.record({ topic: fc.constantFrom(...topics), terms: terms.map((some) => new Set(some)) }),
  { minLength: 1, maxLength: 12 },
);

/** The definition, written out: closeness as the cosine of two vectors with a place for every term. */
function byDefinition(
  told: readonly ToldText[],
  asked: readonly string[],
  rarity: readonly ToldText[] = told,
) {
  const idf = (term: string) => {
    const having = rarity.filter((text) => text.terms.has(term)).length;
    return having === 0 ? Math.log(1 + rarity.length) : Math.log(1 + rarity.length / having);
  };
  const length = (some: Iterable<string>) =>
    Math.sqrt([...some].reduce((sum, term) => sum + idf(term) ** 2, 0));
  const kernel = (text: ToldText) => {
    const dot = asked.filter((term) => text.terms.has(term)).reduce((sum, term) => sum + idf(term) ** 2, 0);
    return Math.exp(8 * (dot / (length(asked) * length(text.terms)) - 1));
  };
  const mean = (some: readonly ToldText[]) => some.reduce((sum, text) => sum + kernel(text), 0) / some.length;
  return topics.map((topic) => {
    const own = told.filter((text) => text.topic === topic);
    return own.length === 0 ? 0 : Math.log(mean(own)) - Math.log(mean(told));
  });
}

describe("NearTexts", () => {
  it("is the density of each topic's texts over that of all, as defined", () => {
    fc.assert(
      fc.property(texts, terms, (told, asked) => {
        const logs = new NearTexts(topics, told).weigh(asked, () => true);
        for (const [row, log] of byDefinition(told, asked).entries()) expect(logs[row]).toBeCloseTo(log, 9);
      }),
    );
  });

  it("leaves a text out as if nobody had written it, but for how rare words are, and brings it back", () => {
    fc.assert(
      fc.property(texts, terms, fc.nat(), (told, asked, number) => {
        const near = new NearTexts(topics, told);
        const before = near.weigh(asked, () => true);
        const out = told[number % told.length];
        if (!out) return;
        near.leaveOut(out, true);
        const rest = told.filter((text) => text !== out);
        const without = near.weigh(asked, () => true);
        if (rest.length > 0) {
          for (const [row, log] of byDefinition(rest, asked, told).entries())
            expect(without[row]).toBeCloseTo(log, 9);
        }
        near.leaveOut(out, false);
        expect(near.weigh(asked, () => true)).toEqual(before);
      }),
    );
  });

  it("says nothing of topics that are not possible, nor counts their texts", () => {
    const told = [
      { topic: "dent", terms: new Set(["ding", "wall"]) },
      { topic: "lime", terms: new Set(["chalk", "white"]) },
      { topic: "wear", terms: new Set(["ding", "thin"]) },
    ];
    const logs = new NearTexts(topics, told).weigh(["ding"], (topic) => topic !== "wear");
    expect(logs[2]).toBe(0);
    expect(logs[0]).toBeGreaterThan(0);
    expect(logs[1]).toBeLessThan(0);
  });

  it("takes a slip for the word that was meant, and a stranger for one that nothing has", () => {
    const near = new NearTexts(topics, [
      { topic: "dent", terms: new Set(["dimple"]) },
      { topic: "lime", terms: new Set(["kettle"]) },
    ]);
    expect(near.weigh(["dimpel"], () => true)).toEqual(near.weigh(["dimple"], () => true));
    expect([...near.weigh(["zither"], () => true)]).toEqual([0, 0, 0]);
  });
});
