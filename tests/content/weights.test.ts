import { describe, expect, it } from "vitest";
import { problemsThatTeach } from "@/bin/reference";
import { openBench } from "@/lib/consult/bench/openBench";
import { learnOpinionWeights } from "@/lib/evaluation/opinions/learnOpinionWeights";

const { bench } = openBench({});

describe("the weights of the sources", () => {
  /*
   * The prior is left out: notes and problems are as many for rare causes as for common ones, so that they cannot teach it; and
   * so is what like cases count, which a casebook with one or two cases a cause cannot teach.
   */
  it("are those that the handbook, the demo casebook and the problems told apart from them teach (npm run -s evaluate -- --opinions)", {
    timeout: 120_000,
  }, () => {
    const { prior: _, likeCases: __, ...kept } = bench.vocabulary.weights;
    const { weights, leftOut } = learnOpinionWeights(bench, problemsThatTeach());
    for (const [name, weight] of Object.entries(kept)) {
      expect({ name, weight: Object.entries(weights).find(([own]) => own === name)?.[1] }).toEqual({
        name,
        weight: expect.closeTo(weight, 2),
      });
    }
    expect(leftOut.hit3).toBeGreaterThan(0.9);
  });
});
