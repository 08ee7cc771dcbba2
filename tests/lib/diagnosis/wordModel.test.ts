import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { WordModel } from "@/lib/diagnosis/wordModel";

const counts = (text: string) => {
  const terms = new Map<string, number>();
  for (const term of text.split(" ")) terms.set(term, (terms.get(term) ?? 0) + 1);
  return terms;
};
const anything = () => true;

function smallModel(): WordModel {
  const model = new WordModel(["dent", "dirt"]);
  model.learn("dent", counts("dropped stairs dent"));
  model.learn("dirt", counts("crust spit smell crust"));
  return model;
}

describe("WordModel", () => {
  it("mixes a cause's own words with those of all: worked by hand", () => {
    // dent: N 3, dirt: N 4, all 7. "dent": n 1 of 3; P(term) = (1 + .1) / 7, m = 80.
    const mixedIn = (80 * 1.1) / 7;
    const { logs } = smallModel().weigh(["dent"], anything);
    expect(logs[0]).toBeCloseTo(Math.log((((1 + mixedIn) / 83) * 80) / mixedIn), 12);
    expect(logs[1]).toBeCloseTo(Math.log(((mixedIn / 84) * 80) / mixedIn), 12);
  });

  it("believes more in the cause that is told with a word, and reads a slip as the word", () => {
    const { logs } = smallModel().weigh(["stairs"], anything);
    expect(logs[0]).toBeGreaterThan(logs[1] ?? 0);
    expect([...smallModel().weigh(["stiars"], anything).logs]).toEqual([...logs]);
  });

  it("counts as strange what no possible cause was told with", () => {
    const model = smallModel();
    expect(model.weigh(["stairs", "toaster"], anything).strange).toBe(0.5);
    expect(model.weigh(["stairs"], (cause) => cause === "dirt").strange).toBe(1);
    expect(model.weigh([], anything).strange).toBe(1);
  });

  it("tells how much of a text each cause has: worked by hand", () => {
    // Of 7 words told "crust" is 2, every other 1; dent has three of the others, dirt "crust" twice and two of the others.
    const [crust, other] = [Math.log(7 / 2), Math.log(7)];
    const [dent, dirt] = smallModel().affinity(["crust", "stairs", "toaster"]);
    expect(dent).toBeCloseTo(other / Math.sqrt(3 * other), 12);
    expect(dirt).toBeCloseTo((crust * Math.SQRT2) / Math.sqrt(2 * crust + 2 * other), 12);
    expect([...smallModel().affinity(["toaster"])]).toEqual([0, 0]);
  });

  it("shares nothing that tells where everything was told with one word, nor where nothing was", () => {
    const model = new WordModel(["dent", "dirt"]);
    expect([...model.affinity(["crust"])]).toEqual([0, 0]);
    for (const share of [0.1, 0.2, 0.3]) model.learn("dent", counts("crust"), share);
    model.learn("dirt", counts("crust"), 0.7);
    for (const one of model.affinity(["crust"])) expect(one).toBeCloseTo(0, 6);
    expect([...model.affinity(["crust"])].every(Number.isFinite)).toBe(true);
  });

  it("has the most of a text that is told as a cause is, and less than the root of what the text tells in all", () => {
    // The sum of roots of products is largest where both are alike: Cauchy 1821.
    const words = ["dropped", "stairs", "dent", "crust", "spit", "smell"];
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...words), { minLength: 1 }), (text) => {
        const inAll = text.reduce((sum, word) => sum + (word === "crust" ? Math.log(7 / 2) : Math.log(7)), 0);
        for (const one of smallModel().affinity(text))
          expect(one).toBeLessThanOrEqual(Math.sqrt(inAll) + 1e-12);
      }),
    );
  });

  it("has the same of a text whether asked before or only after a lesson", () => {
    const word = fc.constantFrom("dropped", "stairs", "crust", "spit", "lacquer", "rattle");
    const said = fc.array(word, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(said, said, fc.constantFrom(1, 0.4), (text, asked, share) => {
        const [early, late] = [smallModel(), smallModel()];
        early.affinity(asked);
        for (const model of [early, late]) model.learn("dirt", counts(text.join(" ")), share);
        for (const [row, one] of early.affinity(asked).entries())
          expect(one).toBeCloseTo(late.affinity(asked)[row] ?? 0, 9);
      }),
    );
  });

  it("says nothing of a cause that is not possible, nor of one that it does not know", () => {
    const model = smallModel();
    model.learn("unheard", counts("stairs"));
    expect(model.weigh(["stairs"], (cause) => cause === "dent").logs[1]).toBe(0);
  });

  it("is as it was once a text is taken back", () => {
    const word = fc.constantFrom("dropped", "stairs", "crust", "spit", "lacquer", "rattle");
    fc.assert(
      fc.property(fc.array(word, { maxLength: 8 }), fc.array(word, { maxLength: 5 }), (text, asked) => {
        const model = smallModel();
        const before = model.weigh(asked, anything);
        model.learn("dirt", counts(text.join(" ")), 0.7);
        model.learn("dirt", counts(text.join(" ")), -0.7);
        const after = model.weigh(asked, anything);
        expect(after.strange).toBe(before.strange);
        for (const [row, log] of after.logs.entries()) expect(log).toBeCloseTo(before.logs[row] ?? 0, 9);
      }),
    );
  });
});
