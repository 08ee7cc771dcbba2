import { describe, expect, it } from "vitest";
import { buildBench } from "@/lib/consult/bench/bench";
import { outlookOfRepair } from "@/lib/consult/sheet/outlookOfRepair";
import { smallVocabulary } from "../../reading/smallVocabulary";
import { dentCase, dirtCase, secondDentCase, smallCasebook, smallCases } from "../smallCasebook";

const bench = buildBench(smallVocabulary, smallCasebook(smallCases));
const like = (...cases: readonly (typeof dentCase)[]) =>
  cases.map((kase) => ({ case: kase, minutes: 30, weight: 1 }));

describe("the outlook of a repair", () => {
  it("counts like cases apart from all, and tells the harms of like cases first", () => {
    const outlook = outlookOfRepair("press-out", like(dentCase, dirtCase), bench);
    expect(outlook).toMatchObject({ likeDone: 1, likeHarmed: 1, warning: { done: 2, harmed: 2 } });
    expect(outlook?.harms.map((harm) => harm.case)).toEqual([dentCase.id, secondDentCase.id]);
    expect(outlook?.harms[0]?.what).toBe("Wall went out too far.");
    // Two of two: Jeffreys' lower end is the 2.5 % point of Beta(2.5, .5), computed by lib/estimate's tested quantile.
    expect(outlook?.interval?.high).toBe(1);
    expect(outlook?.interval?.low).toBeGreaterThan(0.3);
  });

  it("has no interval for what was never done, and is none for what the handbook does not know", () => {
    const fresh = buildBench(smallVocabulary, smallCasebook([]));
    expect(outlookOfRepair("press-out", [], fresh)).toMatchObject({ interval: undefined, harms: [] });
    expect(outlookOfRepair("no-such-repair", [], bench)).toBeUndefined();
  });
});
