import { describe, expect, it } from "vitest";
import { settleAnswer } from "@/lib/study/answer/settleAnswer";

const isCause = (id: string) => ["dent", "dirt", "wear"].includes(id);
const settle = (...rows: readonly (readonly [string, string])[]) =>
  settleAnswer(
    rows.map(([cause, sure]) => ({ cause, sure })),
    isCause,
  );

describe("the causes that were named", () => {
  it("are taken with how sure, rows left blank passed over", () => {
    expect(settle(["dent", "70"], ["", ""], ["dirt", " 12,5 "])).toEqual({
      named: [
        { cause: "dent", sure: 0.7 },
        { cause: "dirt", sure: 0.125 },
      ],
      problems: [],
    });
  });

  it("may add up to 100 and not to more", () => {
    expect(settle(["dent", "33.3"], ["dirt", "33.3"], ["wear", "33.4"]).problems).toEqual([]);
    expect(settle(["dent", "80"], ["dirt", "30"]).problems).toEqual([
      "All together must be at most 100; got 110; take some away.",
    ]);
  });

  it.each([
    [[["", ""]], "At least one cause must be named"],
    [[["dent", ""]], "How sure you are must go with every cause"],
    [[["", "40"]], "A cause must go with how sure you are; there is 40 without one"],
    [[["unheard-of", "40"]], "got 'unheard-of'"],
    [[["dent", "0"]], "over 0 and at most 100; got '0'"],
    [[["dent", "101"]], "over 0 and at most 100; got '101'"],
    [[["dent", "very"]], "got 'very'"],
    [[["dent", "-5"]], "got '-5'"],
    [
      [
        ["dent", "10"],
        ["dent", "20"],
      ],
      "one stands twice",
    ],
  ] as const)("are refused in words: %j", (rows, words) => {
    const { named, problems } = settle(...rows);
    expect(named).toBeUndefined();
    expect(problems.join(" ")).toContain(words);
  });
});
