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
